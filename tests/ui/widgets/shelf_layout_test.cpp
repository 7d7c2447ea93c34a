#include "ui/widgets/shelf_layout.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <QRegion>

namespace quarterturn {
namespace {

struct Page {
    ShelfMeasures measures;
    std::vector<int> shelves;
    ShelfLayout layout;
    int photos = 0;

    Page() {
        measures = {.width = *rc::gen::inRange(50, 2000),
                    .margin = *rc::gen::inRange(0, 40),
                    .least_tile = *rc::gen::inRange(20, 300),
                    .gap = *rc::gen::inRange(0, 20),
                    .heading = *rc::gen::inRange(10, 80),
                    .below_tile = *rc::gen::inRange(0, 60)};
        shelves = *rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 30)));
        layout.arrange(measures, shelves);
        for (const int count : shelves) photos += count;
    }
    int any_photo() const { return *rc::gen::inRange(0, photos); }
};

RC_GTEST_PROP(ShelfLayoutProperty, NothingLiesOnAnythingElseAndAllLiesOnThePage, ()) {
    const Page page;
    std::vector<QRect> areas;
    for (int i = 0; i < page.photos; ++i) areas.push_back(page.layout.tile(i));
    for (std::size_t i = 0; i < page.shelves.size(); ++i) {
        areas.push_back(page.layout.heading(static_cast<int>(i)));
    }
    const QRect whole(0, 0, page.measures.width, page.layout.height());
    QRegion covered;
    for (const QRect& area : areas) {
        if (page.measures.width > 2 * page.measures.margin) RC_ASSERT(whole.contains(area));
        RC_ASSERT(!covered.intersects(area));
        covered += area;
    }
}

RC_GTEST_PROP(ShelfLayoutProperty, WhatIsSeenIsWhatTouchesTheLines, ()) {
    const Page page;
    const int top = *rc::gen::inRange(0, page.layout.height());
    const int bottom = top + *rc::gen::inRange(1, 1500);
    const auto seen = page.layout.seen(top, bottom);
    const QRect lines(0, top, page.measures.width, bottom - top);
    for (int i = 0; i < page.photos; ++i) {
        const bool named = i >= seen.first_photo && i < seen.end_photo;
        const bool touches = page.layout.tile(i).intersects(lines);
        // A row whose gap alone is touched may be named.
        RC_ASSERT(!touches || named);
        const QRect with_gap = page.layout.tile(i).adjusted(0, 0, 0, page.measures.gap);
        RC_ASSERT(!named || with_gap.intersects(lines));
    }
    for (std::size_t i = 0; i < page.shelves.size(); ++i) {
        const int shelf = static_cast<int>(i);
        if (page.layout.heading(shelf).intersects(lines)) {
            RC_ASSERT(shelf >= seen.first_shelf && shelf < seen.end_shelf);
        }
    }
}

RC_GTEST_PROP(ShelfLayoutProperty, APointOnATileIsItsPhoto, ()) {
    const Page page;
    const int photo = page.any_photo();
    RC_ASSERT(page.layout.photo_at(page.layout.tile(photo).center()) == photo);
    RC_ASSERT(page.layout.photo_at(page.layout.heading(page.layout.shelf_of(photo)).center()) ==
              -1);
}

RC_GTEST_PROP(ShelfLayoutProperty, DownGoesDownAndUpComesToTheSameRowAgain, ()) {
    const Page page;
    const int photo = page.any_photo();
    const int below = page.layout.below(photo);
    if (below == photo) {
        const int last_row = page.layout.tile(page.photos - 1).top();
        RC_ASSERT(page.layout.tile(photo).top() == last_row);
    } else {
        RC_ASSERT(page.layout.tile(below).top() > page.layout.tile(photo).top());
        RC_ASSERT(page.layout.tile(page.layout.above(below)).top() ==
                  page.layout.tile(photo).top());
    }
}

}  // namespace
}  // namespace quarterturn
