#include "indexer/sheet/heads.h"

#include "indexer/image/head.h"
#include "indexer/image/one_thread_each.h"
#include "indexer/image/shrink.h"
#include "indexer/sheet/photo_file.h"
#include "indexer/sheet/side_by_side.h"
#include "indexer/store/found_head_table.h"
#include "indexer/store/small_picture.h"

namespace quarterturn {
namespace {

// A picture is kept this much larger than its cell, so that a part of it can fill the cell.
constexpr double room_for_cropping = 1.4;
constexpr double cell_ratio = 4.0 / 3;
constexpr int search_long_edge = 512;  // pixels
// About 200 MB on A3.
constexpr std::size_t most_kept = 48;

struct Wanted {
    SheetPhoto* photo = nullptr;
    int long_edge = 0;  // pixels
};

int long_edge_for(double column_width_mm) {
    return cvRound(column_width_mm * cell_ratio / 25.4 * print_dpi * room_for_cropping);
}

void add_photos(std::vector<Wanted>& wanted, std::vector<SheetBand>& bands, int long_edge) {
    for (SheetBand& band : bands) {
        for (SheetCell& cell : band.cells) {
            if (cell.photo) wanted.push_back({&*cell.photo, long_edge});
        }
    }
}

cv::Mat no_larger_than(const cv::Mat& picture, int long_edge) {
    const double scale = static_cast<double>(long_edge) / std::max(picture.cols, picture.rows);
    if (scale >= 1) return picture;
    const auto scaled = [&](int edge) { return std::max(1, cvRound(edge * scale)); };
    return shrunk_to(picture, {scaled(picture.cols), scaled(picture.rows)});
}

HeadBox share_of(const cv::Rect& head, const cv::Mat& picture) {
    const auto share = [](int length, int of) { return static_cast<double>(length) / of; };
    return {share(head.x, picture.cols), share(head.y, picture.rows),
            share(head.width, picture.cols), share(head.height, picture.rows)};
}

Part as_shown(const HeadBox& head, bool mirrored) {
    return {mirrored ? 1 - head.x - head.width : head.x, head.y, head.width, head.height};
}

// Loads what it looks with when it has to; one for each thread.
class HeadSeeker {
  public:
    FoundHead operator()(const cv::Mat& picture) {
        if (!finder_) finder_.emplace();
        const auto head = finder_->head(picture);
        return head && !head->empty() ? FoundHead{share_of(*head, picture)} : std::nullopt;
    }

  private:
    std::optional<HeadFinder> finder_;
};

// The heads of some photos: those that the library knows, and those that are found now. Several
// threads may ask and add for different photos.
class Heads {
  public:
    Heads(Library& library, std::vector<SheetPhoto*> photos)
        : library_(library), photos_(std::move(photos)), found_(photos_.size()) {
        std::vector<PhotoId> ids;
        for (const SheetPhoto* photo : photos_) ids.push_back(photo->id);
        known_ = table().of(ids);
    }

    bool is_sought(std::size_t index) const {
        return photos_[index]->of_a_head && !known_.contains(photos_[index]->id);
    }
    void add(std::size_t index, FoundHead head) { found_[index] = head; }

    // Each head to its photo, and what is new to the library.
    void hand_out() {
        std::map<PhotoId, FoundHead> fresh;
        for (std::size_t i = 0; i < photos_.size(); ++i) {
            if (found_[i]) fresh[photos_[i]->id] = *found_[i];
        }
        keep(fresh);
        known_.merge(fresh);
        for (SheetPhoto* photo : photos_) {
            const auto head = known_.find(photo->id);
            if (!photo->of_a_head || head == known_.end() || !head->second) continue;
            photo->head = as_shown(*head->second, photo->item.mirrored);
        }
    }

  private:
    FoundHeadTable table() { return {library_.database(), head_search_version}; }

    // Where nothing can be written they are looked for again the next time.
    void keep(const std::map<PhotoId, FoundHead>& fresh) {
        try {
            table().keep(fresh);
        } catch (const StoreError&) {
        }
    }

    Library& library_;
    std::vector<SheetPhoto*> photos_;
    std::vector<std::optional<FoundHead>> found_;
    std::map<PhotoId, FoundHead> known_;
};

template <class Work>
auto with_a_seeker_each(const Work& work) {
    return [&work] {
        return [&work, seek = HeadSeeker{}](std::size_t index) mutable { work(index, seek); };
    };
}

std::vector<SheetPhoto*> photos_of(std::span<const Wanted> wanted) {
    std::vector<SheetPhoto*> photos;
    for (const Wanted& one : wanted) photos.push_back(one.photo);
    return photos;
}

Decoded decoded_from_file(const PhotoItem& item, int long_edge, Library& library,
                          Decoder& decoder) {
    return decode_file(library.disk(), decoder, item.file, item.orientation, long_edge,
                       item.sha256);
}

Decoded small_picture(const PhotoItem& item, Library& library, Decoder& decoder) {
    const Path file = small_picture_file(library.folder(), item.sha256);
    Decoded small = decode_file(library.disk(), decoder, file, 1, 0);
    if (small.ok()) return small;
    return decoded_from_file(item, search_long_edge, library, decoder);
}

}  // namespace

void find_heads(SheetContent& content, const SheetStyle& style, Library& library,
                Decoder& decoder) {
    const OneThreadEach one_thread_each;
    std::vector<Wanted> wanted;
    add_photos(wanted, content.bands, long_edge_for(style.column_width(style.columns)));
    add_photos(wanted, content.more, long_edge_for(style.column_width(style.frame_columns)));
    Heads heads(library, photos_of(wanted));
    const auto open = [&](std::size_t i, HeadSeeker& seek) {
        SheetPhoto& photo = *wanted[i].photo;
        const Decoded decoded = decoded_from_file(photo.item, wanted[i].long_edge, library, decoder);
        if (!decoded.ok()) return;
        photo.upright = {static_cast<double>(decoded.full_width),
                         static_cast<double>(decoded.full_height)};
        const cv::Mat picture = no_larger_than(decoded.bgr, wanted[i].long_edge);
        if (heads.is_sought(i)) heads.add(i, seek(picture));
        if (i < most_kept) photo.item.picture = picture;
    };
    side_by_side(wanted.size(), with_a_seeker_each(open), four_at_once);
    heads.hand_out();
}

void find_heads(std::vector<SheetPhoto>& photos, Library& library, Decoder& decoder) {
    const OneThreadEach one_thread_each;
    std::vector<SheetPhoto*> wanted;
    for (SheetPhoto& photo : photos) wanted.push_back(&photo);
    Heads heads(library, wanted);
    const auto look = [&](std::size_t i, HeadSeeker& seek) {
        if (!heads.is_sought(i)) return;
        const Decoded decoded = small_picture(photos[i].item, library, decoder);
        if (decoded.ok()) heads.add(i, seek(decoded.bgr));
    };
    side_by_side(photos.size(), with_a_seeker_each(look), four_at_once);
    heads.hand_out();
}

}  // namespace quarterturn
