#include "ui/pairs/fact_words.h"

#include <QCoreApplication>

#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

// Marked here for translation, looked up by use_words().
[[maybe_unused]] constexpr std::array uses{
    QT_TRANSLATE_NOOP("pairs", "own record"), QT_TRANSLATE_NOOP("pairs", "shown in consultation"),
    QT_TRANSLATE_NOOP("pairs", "website"),    QT_TRANSLATE_NOOP("pairs", "social media"),
    QT_TRANSLATE_NOOP("pairs", "print"),      QT_TRANSLATE_NOOP("pairs", "competition"),
    QT_TRANSLATE_NOOP("pairs", "teaching")};

QString said(const char* text) {
    return QCoreApplication::translate("pairs", text);
}

}  // namespace

QString shown(Fact fact) {
    switch (fact) {
        case Fact::length:
            return said(QT_TRANSLATE_NOOP("pairs", "Length of the hair"));
        case Fact::texture:
            return said(QT_TRANSLATE_NOOP("pairs", "Texture"));
        case Fact::density:
            return said(QT_TRANSLATE_NOOP("pairs", "Density"));
        case Fact::colour:
            return said(QT_TRANSLATE_NOOP("pairs", "Colour"));
        case Fact::family:
            return said(QT_TRANSLATE_NOOP("pairs", "Look family"));
        case Fact::parting:
            return said(QT_TRANSLATE_NOOP("pairs", "Parting"));
        case Fact::accessory:
            return said(QT_TRANSLATE_NOOP("pairs", "Accessory"));
        case Fact::worn:
            return said(QT_TRANSLATE_NOOP("pairs", "Worn when"));
        case Fact::season:
            return said(QT_TRANSLATE_NOOP("pairs", "Season"));
        case Fact::year:
            return said(QT_TRANSLATE_NOOP("pairs", "Year"));
        case Fact::angle:
            return said(QT_TRANSLATE_NOOP("pairs", "Angle"));
        case Fact::kind:
            return said(QT_TRANSLATE_NOOP("pairs", "Kind of pair"));
        case Fact::use:
            return said(QT_TRANSLATE_NOOP("pairs", "Use allowed by consent"));
    }
    return {};
}

QString shown(PairKind kind) {
    switch (kind) {
        case PairKind::before_and_after:
            return said(QT_TRANSLATE_NOOP("pairs", "before and after"));
        case PairKind::trial_and_day:
            return said(QT_TRANSLATE_NOOP("pairs", "trial and wedding day"));
        case PairKind::trial_and_trial:
            return said(QT_TRANSLATE_NOOP("pairs", "trial and trial"));
    }
    return {};
}

QString shown_value(Fact fact, const std::string& value) {
    if (fact == Fact::angle) {
        if (const auto angle = parse_angle(value)) return shown(*angle);
    } else if (fact == Fact::worn) {
        if (const auto worn = parse_worn(value)) return shown(*worn);
    } else if (fact == Fact::kind) {
        if (const auto kind = parse_pair_kind(value)) return shown(*kind);
    } else if (fact == Fact::use) {
        if (const auto use = parse_use(value)) return use_words(*use);
    }
    return from_utf8(value);
}

QString use_words(Use use) {
    return QCoreApplication::translate("pairs", std::string(word(use)).c_str());
}

QString first_words(const PairPlace& place) {
    switch (place.kind) {
        case PairKind::before_and_after:
            return said(QT_TRANSLATE_NOOP("pairs", "Before"));
        case PairKind::trial_and_day:
            return said(QT_TRANSLATE_NOOP("pairs", "At the trial"));
        case PairKind::trial_and_trial:
            return QCoreApplication::translate("pairs", "Trial %1").arg(place.number);
    }
    return {};
}

QString second_words(const PairPlace& place) {
    switch (place.kind) {
        case PairKind::before_and_after:
            return said(QT_TRANSLATE_NOOP("pairs", "After"));
        case PairKind::trial_and_day:
            return said(QT_TRANSLATE_NOOP("pairs", "On the wedding day"));
        case PairKind::trial_and_trial:
            return QCoreApplication::translate("pairs", "Trial %1").arg(place.number + 1);
    }
    return {};
}

}  // namespace quarterturn
