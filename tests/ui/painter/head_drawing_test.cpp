#include "ui/painter/head_drawing.h"

#include <rapidcheck/gtest.h>

#include <QPainter>

#include "tests/ui/painter/painted.h"

namespace quarterturn {
namespace {

const Box plan_box{5, 5, 40, 40};

int changed_pixels(const HeadDrawing& one, const HeadDrawing& other, const Box& within) {
    const QImage first = painted(document_of({HeadItem{plan_box, one}}));
    const QImage second = painted(document_of({HeadItem{plan_box, other}}));
    const QRect area = pixels(within);
    int changed = 0;
    for (int y = area.top(); y <= area.bottom(); ++y) {
        for (int x = area.left(); x <= area.right(); ++x) {
            if (first.pixel(x, y) != second.pixel(x, y)) ++changed;
        }
    }
    return changed;
}

TEST(HeadDrawing, OnAPageEachThingLiesWhereItWasDrawnAndNowhereElse) {
    HeadDrawing left;
    left.strokes = {{StrokeKind::parting, {{-0.5, -0.6}, {-0.5, 0.6}}}};
    EXPECT_GT(changed_pixels({}, left, {5, 5, 20, 40}), 100);
    EXPECT_EQ(changed_pixels({}, left, {25, 5, 20, 40}), 0);
    HeadDrawing back;
    back.marks = {{7, {0, 0.7}, ""}};
    EXPECT_EQ(changed_pixels({}, back, {5, 5, 40, 22}), 0);
    EXPECT_GT(changed_pixels({}, back, {5, 27, 40, 18}), 100);
}

TEST(HeadDrawing, AMarkShowsItsNumberAndASectionIsToldFromAPartingByItsShape) {
    EXPECT_GT(changed_pixels({{}, {{1, {0, 0}, ""}}}, {{}, {{8, {0, 0}, ""}}}, plan_box), 20);
    const std::vector<PlanPoint> line{{-0.8, 0}, {0.8, 0}};
    const DrawingColours one_colour{Qt::black, Qt::black, Qt::black,
                                    Qt::white, Qt::white, Qt::black};
    const auto dark_columns = [&](StrokeKind kind) {
        QImage image(200, 200, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        draw_head_drawing(painter, image.rect(), {{{kind, line}}, {}}, one_colour);
        painter.end();
        const int y = static_cast<int>(in_head_box(image.rect(), {0, 0}).y());
        int dark = 0;
        for (int x = 50; x < 150; ++x) dark += image.pixelColor(x, y).lightness() < 128 ? 1 : 0;
        return dark;
    };
    EXPECT_EQ(dark_columns(StrokeKind::parting), 100);
    EXPECT_LT(dark_columns(StrokeKind::section), 80);
}

RC_GTEST_PROP(HeadDrawing, PointsGoIntoABoxAndBack, ()) {
    const QRectF area(*rc::gen::inRange(0, 50), *rc::gen::inRange(0, 50),
                      *rc::gen::inRange(20, 900), *rc::gen::inRange(20, 900));
    const PlanPoint point{*rc::gen::inRange(-100, 101) / 100.0,
                          *rc::gen::inRange(-100, 101) / 100.0};
    const PlanPoint back = on_head_plan(area, in_head_box(area, point));
    RC_ASSERT(std::abs(back.x - point.x) < 1e-9);
    RC_ASSERT(std::abs(back.y - point.y) < 1e-9);
}

}  // namespace
}  // namespace quarterturn
