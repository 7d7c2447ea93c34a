#include "ui/theme/palette.h"

#include <cmath>

namespace quarterturn {
namespace {

struct Colours {
    QColor page, card, ink, quiet, outline, hairline, accent, on_accent, wash;
};

const Colours& colours_of(Mood mood) {
    static const Colours paper{"#f7f2ea", "#fffdf9", "#2b2320", "#645850", "#85786d",
                               "#e2d8cb", "#9c3f26", "#fffdf9", "#f4e3d8"};
    static const Colours dawn{"#322a26", "#3d332e", "#f0e4d6", "#cdbcac", "#a59486",
                              "#54483f", "#eda37f", "#2b211c", "#57402f"};
    return mood == Mood::paper ? paper : dawn;
}

// WCAG 2.2, "relative luminance", with the threshold as corrected in the 2021 note.
double linear(double channel) {
    return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
}

}  // namespace

QPalette make_palette(Mood mood) {
    const Colours& c = colours_of(mood);
    QPalette palette;
    palette.setColor(QPalette::Window, c.page);
    palette.setColor(QPalette::WindowText, c.ink);
    palette.setColor(QPalette::Base, c.card);
    palette.setColor(QPalette::AlternateBase, c.wash);
    palette.setColor(QPalette::Text, c.ink);
    palette.setColor(QPalette::PlaceholderText, c.quiet);
    palette.setColor(QPalette::Button, c.card);
    palette.setColor(QPalette::ButtonText, c.ink);
    palette.setColor(QPalette::BrightText, c.accent);
    palette.setColor(QPalette::Highlight, c.accent);
    palette.setColor(QPalette::HighlightedText, c.on_accent);
    palette.setColor(QPalette::Link, c.accent);
    palette.setColor(QPalette::LinkVisited, c.accent);
    palette.setColor(QPalette::ToolTipBase, c.card);
    palette.setColor(QPalette::ToolTipText, c.ink);
    palette.setColor(QPalette::Light, c.card);
    palette.setColor(QPalette::Midlight, c.hairline);
    palette.setColor(QPalette::Mid, c.outline);
    palette.setColor(QPalette::Dark, c.quiet);
    palette.setColor(QPalette::Shadow, c.hairline);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText}) {
        palette.setColor(QPalette::Disabled, role, c.quiet);
    }
    return palette;
}

QColor page_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Window);
}
QColor card_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Base);
}
QColor ink_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Text);
}
QColor quiet_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Dark);
}
QColor outline_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Mid);
}
QColor hairline_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Midlight);
}
QColor accent_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::Highlight);
}
QColor on_accent_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::HighlightedText);
}
QColor wash_colour(const QPalette& p) {
    return p.color(QPalette::Active, QPalette::AlternateBase);
}

double relative_luminance(const QColor& colour) {
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

double contrast_ratio(const QColor& one, const QColor& other) {
    const double a = relative_luminance(one);
    const double b = relative_luminance(other);
    return (std::max(a, b) + 0.05) / (std::min(a, b) + 0.05);
}

}  // namespace quarterturn
