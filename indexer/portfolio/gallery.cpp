#include "indexer/portfolio/gallery.h"

#include <algorithm>

#include "indexer/disk/write_once.h"
#include "indexer/portfolio/gallery_style.h"
#include "indexer/portfolio/leaving.h"
#include "indexer/sheet/html.h"
#include "indexer/store/library_settings.h"

namespace quarterturn {
namespace {

// Long edges in pixels: a phone, a tablet, a large screen (common practice).
constexpr std::array gallery_edges{640, 1280, 2160};
constexpr std::int64_t most_gallery_bytes = std::int64_t{1} << 28;
constexpr std::size_t in_view_at_once = 2;  // loaded at once, the rest when it is scrolled to

struct GalleryPicture {
    std::string file;  // relative to the page
    cv::Size size;
};

struct GalleryPhoto {
    Photo photo;
    std::string credit_line;
    std::vector<GalleryPicture> pictures;  // the smallest first
};

std::string seen_from(Angle angle) {
    switch (angle) {
        case Angle::front:
            return "from the front";
        case Angle::left:
            return "from the left";
        case Angle::right:
            return "from the right";
        case Angle::back:
            return "from the back";
        case Angle::crown:
            return "from above";
        case Angle::left_three_quarter:
            return "from the front left";
        case Angle::right_three_quarter:
            return "from the front right";
        case Angle::detail:
            return "from close by";
    }
    return {};
}

std::string values_of(const LookFacts& facts, std::initializer_list<Fact> wanted) {
    std::string values;
    for (const Fact fact : wanted) {
        for (const LookFact& each : facts) {
            if (each.fact == fact) values += (values.empty() ? "" : ", ") + each.value;
        }
    }
    return values;
}

class GalleryWriter {
  public:
    GalleryWriter(Library& library, Decoder& decoder, const GalleryWishes& wishes, LocalTime now)
        : library_(library), decoder_(decoder), wishes_(wishes), now_(now) {}

    Gallery write(std::span<const Photo> photos) {
        refuse_unless_empty();
        refuse_names(library_, photos, "title of the page", wishes_.name);
        std::vector<Photo> left(photos.begin(), photos.end());
        for (const int edge : gallery_edges) {
            const auto sent = send(left, edge);
            if (gallery_.photos.empty()) gallery_.photos = sent;
            std::erase_if(left, [&](const Photo& photo) { return !was_made_smaller(photo, edge); });
        }
        if (shown_.empty()) return std::move(gallery_);
        const std::string html = page();
        gallery_.page = wishes_.folder / "index.html";
        write_once(library_.disk(), gallery_.page, std::as_bytes(std::span(html)));
        return std::move(gallery_);
    }

  private:
    Path pictures() const { return wishes_.folder / "pictures"; }

    void refuse_unless_empty() {
        const Path folder = std::filesystem::absolute(wishes_.folder);
        // What was refused before has left a folder without pictures.
        const auto holds_something = [this](const Path& entry) {
            return !std::filesystem::is_directory(entry) || !library_.disk().list(entry).empty();
        };
        if (!library_.disk().exists(folder)) return;
        if (std::ranges::none_of(library_.disk().list(folder), holds_something)) return;
        throw StoreError(folder.string() + " is not empty: name a new folder for the gallery.");
    }

    std::vector<PhotoGone> send(const std::vector<Photo>& photos, int edge) {
        ExportWishes export_wishes;
        export_wishes.use = Use::website;
        export_wishes.folder = pictures();
        export_wishes.long_edge = edge;
        export_wishes.no_data_mining = wishes_.no_data_mining;
        const DrawLine draw_nothing = [](cv::Mat&, const std::string&) {};
        auto sent = export_photos(library_, decoder_, draw_nothing, photos, export_wishes, now_);
        for (const PhotoGone& gone : sent) {
            if (gone.exported) add(gone);
        }
        return sent;
    }

    void add(const PhotoGone& gone) {
        const Path file = gone.exported->file;
        const Bytes bytes = library_.disk().read(file, most_gallery_bytes);
        const cv::Size size = decoder_.decode({bytes, 1, 0}).bgr.size();
        auto found = std::ranges::find(shown_, gone.photo.id,
                                       [](const GalleryPhoto& each) { return each.photo.id; });
        if (found == shown_.end()) {
            shown_.push_back({gone.photo, gone.credit_line, {}});
            found = shown_.end() - 1;
        }
        found->pictures.push_back({"pictures/" + file.filename().string(), size});
        ++gallery_.pictures;
    }

    // Else there is nothing larger of it.
    bool was_made_smaller(const Photo& photo, int edge) const {
        const auto found = std::ranges::find(
            shown_, photo.id, [](const GalleryPhoto& each) { return each.photo.id; });
        if (found == shown_.end()) return false;
        const cv::Size size = found->pictures.back().size;
        return std::max(size.width, size.height) == edge;
    }

    LookFacts facts_of(const Photo& photo) {
        return photo.tags.look ? library_.look_facts().of(*photo.tags.look) : LookFacts{};
    }

    // "Low bun, seen from the back"; "Low bun while it is made, seen from close by"
    std::string caption(const Photo& photo) {
        std::string words = values_of(facts_of(photo), {Fact::family});
        if (words.empty()) words = "Bridal hair";
        words.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(words.front())));
        if (photo.tags.stage == Stage::during) words += " while it is made";
        if (photo.tags.stage == Stage::before) words = "The hair before";
        if (photo.tags.angle) words += ", seen " + seen_from(*photo.tags.angle);
        return words;
    }

    // The same, and the hair: nothing of her.
    std::string described(const Photo& photo) {
        const LookFacts facts = facts_of(photo);
        std::string words = caption(photo);
        const std::string hair = values_of(facts, {Fact::colour, Fact::texture, Fact::length});
        if (!hair.empty()) words += "; hair: " + hair;
        const std::string worn = values_of(facts, {Fact::accessory});
        if (!worn.empty()) words += "; worn with: " + worn;
        return words;
    }

    std::string item(const GalleryPhoto& shown, bool at_once) {
        std::string srcset;
        for (const GalleryPicture& picture : shown.pictures) {
            srcset += (srcset.empty() ? "" : ", ") + picture.file + " " +
                      std::to_string(picture.size.width) + "w";
        }
        const GalleryPicture& largest = shown.pictures.back();
        std::string html = "<li><figure><a href=\"" + largest.file + "\"><img src=\"" +
                           shown.pictures.front().file + "\" srcset=\"" + srcset +
                           "\" sizes=\"(min-width: 46rem) 24rem, 94vw\" width=\"" +
                           std::to_string(largest.size.width) + "\" height=\"" +
                           std::to_string(largest.size.height) + "\"" +
                           (at_once ? "" : " loading=\"lazy\"") + " alt=\"" +
                           html_text(described(shown.photo)) + "\"></a>\n<figcaption>" +
                           html_text(caption(shown.photo));
        if (!shown.credit_line.empty()) html += "<br>" + html_text(shown.credit_line);
        return html + "</figcaption></figure></li>\n";
    }

    std::string page() {
        const auto setting = [&](std::string_view name) {
            return html_text(library_.settings().get(name).value_or(""));
        };
        const std::string business = setting(business_name_setting);
        const std::string line = setting(business_line_setting);
        const std::string name = html_text(wishes_.name);
        std::string html =
            "<!DOCTYPE html>\n<html lang=\"en\" dir=\"ltr\">\n<head>\n<meta charset=\"utf-8\">\n"
            "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>" +
            name + (business.empty() ? "" : ", " + business) + "</title>\n<style>" + gallery_style +
            "</style>\n</head>\n<body>\n<header>\n<h1>" + (business.empty() ? name : business) +
            "</h1>\n" + (line.empty() ? "" : "<p>" + line + "</p>\n") + "</header>\n<main>\n" +
            (business.empty() ? "" : "<h2>" + name + "</h2>\n") + "<ul>\n";
        for (std::size_t i = 0; i < shown_.size(); ++i)
            html += item(shown_[i], i < in_view_at_once);
        html += "</ul>\n</main>\n";
        if (!business.empty()) html += "<footer>\n<p>© " + business + "</p>\n</footer>\n";
        return html + "</body>\n</html>\n";
    }

    Library& library_;
    Decoder& decoder_;
    const GalleryWishes& wishes_;
    LocalTime now_;
    Gallery gallery_;
    std::vector<GalleryPhoto> shown_;
};

}  // namespace

Gallery write_gallery(Library& library, Decoder& decoder, std::span<const Photo> photos,
                      const GalleryWishes& wishes, LocalTime now) {
    return GalleryWriter(library, decoder, wishes, now).write(photos);
}

}  // namespace quarterturn
