#include "ui/widgets/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QGuiApplication>
#include <QLocale>
#include <QRegularExpression>
#include <QTime>

namespace quarterturn {
namespace {

// Marked here for translation, looked up by translated() below.
[[maybe_unused]] constexpr std::array marked{QT_TRANSLATE_NOOP("words", "front"),
                                             QT_TRANSLATE_NOOP("words", "left"),
                                             QT_TRANSLATE_NOOP("words", "right"),
                                             QT_TRANSLATE_NOOP("words", "back"),
                                             QT_TRANSLATE_NOOP("words", "crown"),
                                             QT_TRANSLATE_NOOP("words", "left three-quarter"),
                                             QT_TRANSLATE_NOOP("words", "right three-quarter"),
                                             QT_TRANSLATE_NOOP("words", "detail"),
                                             QT_TRANSLATE_NOOP("words", "before"),
                                             QT_TRANSLATE_NOOP("words", "during"),
                                             QT_TRANSLATE_NOOP("words", "after"),
                                             QT_TRANSLATE_NOOP("words", "consultation"),
                                             QT_TRANSLATE_NOOP("words", "trial"),
                                             QT_TRANSLATE_NOOP("words", "wedding day"),
                                             QT_TRANSLATE_NOOP("words", "model shoot"),
                                             QT_TRANSLATE_NOOP("words", "ceremony"),
                                             QT_TRANSLATE_NOOP("words", "evening"),
                                             QT_TRANSLATE_NOOP("words", "other"),
                                             QT_TRANSLATE_NOOP("words", "covered"),
                                             QT_TRANSLATE_NOOP("words", "weak"),
                                             QT_TRANSLATE_NOOP("words", "partly covered"),
                                             QT_TRANSLATE_NOOP("words", "missing"),
                                             QT_TRANSLATE_NOOP("words", "waived"),
                                             QT_TRANSLATE_NOOP("words", "out of focus"),
                                             QT_TRANSLATE_NOOP("words", "moved"),
                                             QT_TRANSLATE_NOOP("words", "too dark"),
                                             QT_TRANSLATE_NOOP("words", "blown out"),
                                             QT_TRANSLATE_NOOP("words", "too small"),
                                             QT_TRANSLATE_NOOP("words", "required"),
                                             QT_TRANSLATE_NOOP("words", "nice to have"),
                                             QT_TRANSLATE_NOOP("words", "a3"),
                                             QT_TRANSLATE_NOOP("words", "a4"),
                                             QT_TRANSLATE_NOOP("words", "a5"),
                                             QT_TRANSLATE_NOOP("words", "letter")};

template <class Value>
QString translated(Value value) {
    return QCoreApplication::translate("words", std::string(word(value)).c_str());
}

}  // namespace

QString shown(Angle angle) {
    return translated(angle);
}
QString shown(Stage stage) {
    return translated(stage);
}
QString shown(SittingKind kind) {
    return translated(kind);
}
QString shown(Worn worn) {
    return translated(worn);
}
QString shown(Coverage coverage) {
    return translated(coverage);
}
QString shown(Quarter quarter) {
    return translated(quarter);
}
QString shown(Flaw flaw) {
    return translated(flaw);
}
QString shown(Need need) {
    return translated(need);
}
QString shown(Paper paper) {
    const QString name = translated(paper);
    return name.left(1).toUpper() + name.mid(1);
}

QString shown(const Device& device) {
    if (device.make.empty() && device.model.empty()) {
        return QCoreApplication::translate("words", "a device that is not named");
    }
    if (device.model.starts_with(device.make)) return from_utf8(device.model);
    return from_utf8(device.make + ' ' + device.model).trimmed();
}

QString shown(Date date) {
    return QLocale().toString(to_qdate(date), QLocale::LongFormat);
}

QString short_shown(Date date) {
    return QLocale().toString(to_qdate(date), QStringLiteral("d MMM yyyy"));
}

QString hours_shown(LocalTime starts, LocalTime ends) {
    if (until_text(starts, ends).empty()) return clock_shown(starts);
    //: from one time of the clock to another
    return QCoreApplication::translate("words", "%1 to %2")
        .arg(clock_shown(starts), clock_shown(ends));
}

QString clock_shown(LocalTime time) {
    const auto since_midnight = time - std::chrono::floor<std::chrono::days>(time);
    const auto milliseconds =
        std::chrono::duration_cast<std::chrono::milliseconds>(since_midnight).count();
    return QLocale().toString(QTime::fromMSecsSinceStartOfDay(static_cast<int>(milliseconds)),
                              clock_format());
}

QString clock_format() {
    static const QRegularExpression seconds(QStringLiteral("[^hHmaAp]s+"));
    return QLocale().timeFormat(QLocale::ShortFormat).remove(seconds);
}

QString capitalised_words(const QString& words) {
    return words.left(1).toUpper() + words.mid(1);
}

QString coverage_sentence(const Ring& ring) {
    QStringList parts;
    for (std::size_t i = 0; i < ring.size(); ++i) {
        //: an angle and how it stands, as in "left covered"
        parts << QCoreApplication::translate("words", "%1 %2")
                     .arg(shown(quarter_angles[i]), shown(ring[i]));
    }
    return parts.join(QStringLiteral(", "));
}

QString isolated(const QString& name) {
    constexpr QChar first_strong_isolate(0x2068);
    constexpr QChar pop_isolate(0x2069);
    if (name.isRightToLeft() == QGuiApplication::isRightToLeft()) return name;
    return first_strong_isolate + name + pop_isolate;
}

QDate to_qdate(Date date) {
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

Date from_qdate(const QDate& date) {
    return std::chrono::year(date.year()) /
           std::chrono::month(static_cast<unsigned>(date.month())) /
           std::chrono::day(static_cast<unsigned>(date.day()));
}

QString from_utf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

std::string to_utf8(const QString& text) {
    return text.toStdString();
}

}  // namespace quarterturn
