#include "ui/theme/palette.h"

#include "tests/ui/support/painted_contrast.h"

namespace quarterturn {
namespace {

class EveryMood : public testing::TestWithParam<Mood> {
  protected:
    QPalette palette = make_palette(GetParam());

    double against_page(const QColor& colour) const {
        return contrast_ratio(colour, page_colour(palette));
    }
    double against_card(const QColor& colour) const {
        return contrast_ratio(colour, card_colour(palette));
    }
    double against_wash(const QColor& colour) const {
        return contrast_ratio(colour, wash_colour(palette));
    }
};

INSTANTIATE_TEST_SUITE_P(Moods, EveryMood, testing::Values(Mood::paper, Mood::dawn));

// WCAG 2.2, 1.4.3 (AA): text 4.5 : 1.
TEST_P(EveryMood, TextCanBeReadOnPageCardAndWash) {
    for (const QColor& text :
         {ink_colour(palette), quiet_colour(palette), accent_colour(palette)}) {
        EXPECT_GE(against_page(text), 4.5) << text.name().toStdString();
        EXPECT_GE(against_card(text), 4.5) << text.name().toStdString();
        EXPECT_GE(against_wash(text), 4.5) << text.name().toStdString();
    }
    EXPECT_GE(contrast_ratio(on_accent_colour(palette), accent_colour(palette)), 4.5);
}

// WCAG 2.2, 1.4.11 (AA): parts of controls and graphics that carry meaning 3 : 1.
TEST_P(EveryMood, OutlinesAndFocusCanBeSeen) {
    for (const QColor& mark : {outline_colour(palette), accent_colour(palette)}) {
        EXPECT_GE(against_page(mark), 3.0) << mark.name().toStdString();
        EXPECT_GE(against_card(mark), 3.0) << mark.name().toStdString();
    }
    EXPECT_GE(contrast_ratio(ink_colour(palette), accent_colour(palette)), 1.5);
}

TEST(Dawn, GivesFarLessLightThanPaper) {
    const double paper = relative_luminance(page_colour(make_palette(Mood::paper)));
    const double dawn = relative_luminance(page_colour(make_palette(Mood::dawn)));
    EXPECT_LT(dawn, paper / 10);
}

// The extremes are WCAG's own: black on white is 21 : 1. #767676 on white is the well-known
// lightest grey that passes at 4.54 : 1 (from memory).
TEST(Contrast, AgreesWithKnownPairs) {
    EXPECT_NEAR(contrast_ratio(Qt::black, Qt::white), 21, 0.001);
    EXPECT_NEAR(contrast_ratio(Qt::white, Qt::white), 1, 0.001);
    EXPECT_NEAR(contrast_ratio(QColor("#767676"), Qt::white), 4.54, 0.01);
}

TEST(PaintedContrast, FindsInkAndGroundOfAPicture) {
    QImage picture(40, 40, QImage::Format_RGB32);
    picture.fill(Qt::white);
    for (int x = 5; x < 15; ++x) picture.setPixelColor(x, 7, QColor("#767676"));
    EXPECT_NEAR(painted_contrast(picture, picture.rect()), 4.54, 0.01);
}

}  // namespace
}  // namespace quarterturn
