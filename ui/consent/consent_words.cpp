#include "ui/consent/consent_words.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// Marked here for translation, looked up below.
[[maybe_unused]] constexpr std::array marked_consent{
    QT_TRANSLATE_NOOP("consent_words", "own record"),
    QT_TRANSLATE_NOOP("consent_words", "shown in consultation"),
    QT_TRANSLATE_NOOP("consent_words", "website"),
    QT_TRANSLATE_NOOP("consent_words", "social media"),
    QT_TRANSLATE_NOOP("consent_words", "print"),
    QT_TRANSLATE_NOOP("consent_words", "competition"),
    QT_TRANSLATE_NOOP("consent_words", "teaching"),
    QT_TRANSLATE_NOOP("consent_words", "in the stylist's own record"),
    QT_TRANSLATE_NOOP("consent_words", "in a consultation"),
    QT_TRANSLATE_NOOP("consent_words", "on a website"),
    QT_TRANSLATE_NOOP("consent_words", "in social media"),
    QT_TRANSLATE_NOOP("consent_words", "in print"),
    QT_TRANSLATE_NOOP("consent_words", "in a competition"),
    QT_TRANSLATE_NOOP("consent_words", "in teaching"),
    QT_TRANSLATE_NOOP("consent_words", "not asked"),
    QT_TRANSLATE_NOOP("consent_words", "granted"),
    QT_TRANSLATE_NOOP("consent_words", "not yet"),
    QT_TRANSLATE_NOOP("consent_words", "ended"),
    QT_TRANSLATE_NOOP("consent_words", "declined"),
    QT_TRANSLATE_NOOP("consent_words", "withdrawn"),
    QT_TRANSLATE_NOOP("consent_words", "with her face"),
    QT_TRANSLATE_NOOP("consent_words", "hair only"),
    QT_TRANSLATE_NOOP("consent_words", "signed form"),
    QT_TRANSLATE_NOOP("consent_words", "message"),
    QT_TRANSLATE_NOOP("consent_words", "spoken"),
    QT_TRANSLATE_NOOP("consent_words", "14 or under"),
    QT_TRANSLATE_NOOP("consent_words", "15"),
    QT_TRANSLATE_NOOP("consent_words", "16"),
    QT_TRANSLATE_NOOP("consent_words", "17"),
    QT_TRANSLATE_NOOP("consent_words", "18 or over"),
    QT_TRANSLATE_NOOP("consent_words", "25 or over")};

QString consent_words(const char* text) {
    return QCoreApplication::translate("consent_words", text);
}

template <class Value>
QString consent_word(Value value) {
    return consent_words(std::string(word(value)).c_str());
}

// Without the day of the week, which nobody asks a consent for.
QString day_words(Date date) {
    return QLocale().toString(to_qdate(date), QStringLiteral("d MMMM yyyy"));
}

QString days_words(const ConsentEntry& entry) {
    if (entry.from && entry.until) {
        return consent_words(QT_TRANSLATE_NOOP("consent_words", "from %1 until %2"))
            .arg(day_words(*entry.from), day_words(*entry.until));
    }
    if (entry.from) {
        return consent_words(QT_TRANSLATE_NOOP("consent_words", "from %1"))
            .arg(day_words(*entry.from));
    }
    if (entry.until) {
        return consent_words(QT_TRANSLATE_NOOP("consent_words", "until %1"))
            .arg(day_words(*entry.until));
    }
    return {};
}

}  // namespace

QString shown(Use use) {
    return consent_word(use);
}
QString shown(Standing standing) {
    return consent_word(standing);
}
QString shown(ConsentSaid said) {
    return consent_word(said);
}
QString shown(ShownAs as) {
    return consent_word(as);
}
QString shown(HowGiven how) {
    return consent_word(how);
}
QString shown(AgeBand age) {
    return consent_word(age);
}

QString where_words(Use use) {
    return consent_words(std::string(in_words(use)).c_str());
}

QString how_far_words(const ConsentEntry& entry) {
    QStringList words{shown(entry.shown)};
    if (const QString days = days_words(entry); !days.isEmpty()) words << days;
    return words.join(QStringLiteral(", "));
}

QString told_words(const ConsentEntry& entry) {
    QStringList words{shown(entry.how)};
    if (!entry.witness.empty()) {
        words.last() = consent_words(QT_TRANSLATE_NOOP("consent_words", "spoken before %1"))
                           .arg(isolated(from_utf8(entry.witness)));
    }
    if (entry.giver == ConsentGiver::guardian) {
        words << consent_words(QT_TRANSLATE_NOOP("consent_words", "by her parent or guardian %1"))
                     .arg(isolated(from_utf8(entry.guardian)));
    }
    words << day_words(entry.said_on);
    return words.join(QStringLiteral(", "));
}

QString history_words(const ConsentEntry& entry) {
    QString words =
        //: a use, and what she said of it
        consent_words(QT_TRANSLATE_NOOP("consent_words", "%1: %2"))
            .arg(capitalised_words(shown(entry.use)), shown(entry.said));
    if (entry.said == ConsentSaid::granted) words += QStringLiteral(", ") + how_far_words(entry);
    if (entry.age) {
        words +=
            consent_words(QT_TRANSLATE_NOOP("consent_words", ", aged %1")).arg(shown(*entry.age));
    }
    return words;
}

QString uses_in_a_row(const std::vector<Use>& uses) {
    QStringList words;
    for (const Use use : uses) words << shown(use);
    return words.join(QStringLiteral(", "));
}

QString consent_caution_words() {
    return consent_words(QT_TRANSLATE_NOOP(
        "consent_words",
        "This keeps what you record and is no legal advice: local law and the photographer's "
        "contract rule, and with children above all."));
}

}  // namespace quarterturn
