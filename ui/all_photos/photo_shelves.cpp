#include "ui/all_photos/photo_shelves.h"

#include "ui/shell/session.h"
#include "ui/theme/theme.h"

namespace quarterturn {
namespace {

constexpr int least_tile_steps = 50;  // "12:42, after, right three-quarter" fits below
constexpr int page_margin_steps = 8;
constexpr int gap_steps = 4;
constexpr int painted_kilobytes = 96 << 10;

}  // namespace

PhotoShelves::PhotoShelves(Session& session, FoundPhotos& photos, QWidget* parent)
    : ShelfView(parent), session_(session), photos_(photos), painted_(painted_kilobytes) {
    setAccessibleName(tr("Photos"));
    setModel(&photos_);
    connect(&session_.pictures(), &PictureLoader::arrived, this, [this](PhotoId photo) {
        const auto in_view = seen();
        for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
            if (photos_.id(i) == photo) update_tile(i);
        }
    });
    connect(this, &ShelfView::picked, this,
            [this](int position) { emit opened(photos_.id(position)); });
}

void PhotoShelves::arrange(ShelfLayout& layout) const {
    std::vector<int> counts;
    for (const Shelf& shelf : photos_.shelves()) counts.push_back(shelf.photos);
    const int small = line_height(TextRole::small);
    const int words = photos_.has_words() ? found_lines * small : 0;
    layout.arrange({.width = viewport()->width(),
                    .margin = space(page_margin_steps),
                    .least_tile = space(least_tile_steps),
                    .gap = space(gap_steps),
                    .heading = line_height(TextRole::heading) + space(7),
                    .below_tile = small + 4 + words},
                   counts);
}

void PhotoShelves::want_what_is_seen() {
    std::vector<PictureWish> wishes;
    const auto in_view = seen();
    for (int i = in_view.first_photo; i < in_view.end_photo; ++i) {
        if (const Photo* photo = photos_.photo(i)) wishes.push_back({*photo, small_long_edge});
    }
    session_.pictures().want(this, wishes);
}

}  // namespace quarterturn
