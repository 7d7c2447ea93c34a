#include <QtMath>

#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

TextItem text_of(const std::string& words, const Box& box, Align align = Align::left) {
    TextItem text;
    text.text = words;
    text.box = box;
    text.points = 12;
    text.align = align;
    return text;
}

QRect rows_below(const QImage& page, double y_mm) {
    const int top = pixels({0, y_mm, 1, 1}).top();
    return {0, top, page.width(), page.height() - top};
}

TEST(Text, WhatDoesNotFitIsCut) {
    const std::string lorem(400, 'x');
    std::string words;
    for (int i = 0; i < 60; ++i) words += "hairpin ";
    for (const std::string& text : {words, lorem}) {
        const Box box{5, 5, 40, 12};  // two lines of 12 points
        const QImage page = painted(document_of({text_of(text, box)}));
        EXPECT_TRUE(has_ink(page, pixels({5, 11, 40, 6})));
        EXPECT_FALSE(has_ink(page, rows_below(page, 17.3)));
        EXPECT_FALSE(has_ink(page, pixels({45.3, 0, 14, 49})));
    }
}

TEST(Text, RulerAndPainterAgreeOnWhatFits) {
    const auto ruler = make_text_ruler();
    std::string words;
    for (int i = 0; i < 12; ++i) words += "section ";
    words += "END";
    const double height = ruler->height_mm(words, 12, false, 40);
    const QImage whole = painted(document_of({text_of(words, {5, 5, 40, height})}));
    const QImage roomy = painted(document_of({text_of(words, {5, 5, 40, 40})}));
    EXPECT_EQ(whole, roomy);
    EXPECT_GT(height, ruler->height_mm("section", 12, false, 40) * 1.9);
}

TEST(Text, AlignsWhereItIsAskedTo) {
    const Box box{5, 5, 50, 8};
    const QRect left = pixels({5, 5, 20, 8});
    const QRect right = pixels({35, 5, 20, 8});
    const auto ink = [&](const std::string& words, Align align) {
        const QImage page = painted(document_of({text_of(words, box, align)}));
        return std::pair(has_ink(page, left), has_ink(page, right));
    };
    EXPECT_EQ(ink("bun", Align::left), std::pair(true, false));
    EXPECT_EQ(ink("bun", Align::right), std::pair(false, true));
    EXPECT_EQ(ink("bun", Align::centre), std::pair(false, false));
    EXPECT_EQ(ink("bun", Align::start), std::pair(true, false));
    EXPECT_EQ(ink("ليان", Align::start), std::pair(false, true));
    EXPECT_EQ(ink("ליה", Align::start), std::pair(false, true));
    EXPECT_EQ(ink("ليان", Align::left), std::pair(true, false));
}

// Every script draws letters and not the boxes of a missing face: a box looks the same for each.
TEST(Text, EachScriptHasItsLetters) {
    const std::vector<std::pair<std::string, std::string>> two_words{
        {"Λευκή", "Ανθή1"}, {"ნინო", "ლუკა"}, {"ليان", "نورا"}, {"שרה", "רחל"}, {"आरती", "सीता"},
        {"Нина", "Вера"},   {"美咲", "春香"}, {"지은", "수아"}, {"Անի", "Նար"}};
    for (const auto& [one, other] : two_words) {
        const Box box{5, 5, 50, 9};
        EXPECT_NE(painted(document_of({text_of(one, box)})),
                  painted(document_of({text_of(other, box)})))
            << one;
    }
}

double luminance(const QColor& colour) {  // WCAG 2.2, relative luminance
    const auto linear = [](double channel) {
        return channel <= 0.04045 ? channel / 12.92 : std::pow((channel + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) +
           0.0722 * linear(colour.blueF());
}

TEST(Text, EveryToneCanBeReadOnPaperAndOnItsTint) {
    const Box box{5, 5, 50, 30};
    for (const Tone tone : {Tone::ink, Tone::soft, Tone::accent}) {
        TextItem text = text_of("█", box);
        text.points = 60;
        text.tone = tone;
        const QImage page = painted(document_of({PanelItem{box}, text}));
        const QColor ground = colour_at(page, 50, 30);
        QColor darkest = ground;
        for (int x = 0; x < page.width(); ++x) {
            const QColor colour = page.pixelColor(x, pixels({0, 18, 1, 1}).top());
            if (luminance(colour) < luminance(darkest)) darkest = colour;
        }
        // WCAG 2.2, 1.4.3: at least 4.5 : 1
        EXPECT_GE((luminance(ground) + 0.05) / (luminance(darkest) + 0.05), 4.5);
    }
}

}  // namespace
}  // namespace quarterturn
