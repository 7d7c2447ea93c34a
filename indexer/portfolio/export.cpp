#include "indexer/portfolio/export.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "indexer/disk/checksum.h"
#include "indexer/disk/write_once.h"
#include "indexer/image/encode.h"
#include "indexer/image/head.h"
#include "indexer/image/profile.h"
#include "indexer/image/shape.h"
#include "indexer/intake/heads.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/looks/pairs.h"
#include "indexer/metadata/write.h"
#include "indexer/portfolio/hair_only.h"
#include "indexer/record/word_list.h"
#include "indexer/store/library_settings.h"

namespace quarterturn {
namespace {

constexpr WordList<ExportShape, all_export_shapes.size()> shape_words{
    {{ExportShape::whole, "whole"},
     {ExportShape::square, "square"},
     {ExportShape::four_to_five, "4:5"},
     {ExportShape::nine_to_sixteen, "9:16"}}};
constexpr int screen_long_edge = 2160;

std::optional<double> width_over_height(ExportShape shape) {
    switch (shape) {
        case ExportShape::whole:
            return std::nullopt;
        case ExportShape::square:
            return 1;
        case ExportShape::four_to_five:
            return 4.0 / 5;
        case ExportShape::nine_to_sixteen:
            return 9.0 / 16;
    }
    return std::nullopt;
}

void refuse_inside_library(Library& library, const Path& folder) {
    using std::filesystem::weakly_canonical;
    const Path inside = weakly_canonical(library.folder());
    const Path wanted = weakly_canonical(std::filesystem::absolute(folder));
    if (std::ranges::mismatch(inside, wanted).in1 != inside.end()) return;
    throw StoreError(wanted.string() +
                     " lies in the library: choose a folder outside it, so that copies and "
                     "originals never mix.");
}

std::string number_in_name(ExportId id) {
    std::string number = std::to_string(id.value);
    if (number.size() < 4) number.insert(0, 4 - number.size(), '0');
    return number;
}

// "social-media-0012.jpg": no name of hers.
std::string export_name(Use use, ExportId id) {
    std::string name(word(use));
    std::ranges::replace(name, ' ', '-');
    return name + "-" + number_in_name(id) + ".jpg";
}

class Exporter {
  public:
    Exporter(Library& library, Decoder& decoder, const DrawLine& draw, const ExportWishes& wishes,
             LocalTime now)
        : library_(library),
          decoder_(decoder),
          draw_(draw),
          wishes_(wishes),
          now_(now),
          gate_(library),
          business_(library.settings().get(business_name_setting).value_or("")),
          icc_(srgb_profile()) {}

    PhotoGone send(const Photo& photo) {
        PhotoGone gone{photo, {}, {}, {}, {}};
        const PhotoToShow shown = gate_.to_show(photo);
        const auto [verdict, hair_only] = gate_.way_out(photo, wishes_.use, date_of(now_));
        for (const Against& against : verdict.against) gone.against.push_back(against.words);
        if (!verdict.may()) return gone;
        try {
            const ExportMetadata metadata = metadata_of(photo, shown);
            if (shown.credit->whose == Whose::photographer) gone.credit_line = metadata.credit_line;
            const cv::Mat picture = picture_of(photo, hair_only);
            gone.exported =
                write(photo, verdict, hair_only.has_value(),
                      with_metadata(jpeg_bytes(picture, wishes_.quality), metadata, icc_));
        } catch (const std::runtime_error& error) {
            gone.problem = error.what();
        }
        return gone;
    }

  private:
    ExportMetadata metadata_of(const Photo& photo, const PhotoToShow& shown) {
        const Credit& credit = shown.credit.value();
        const bool own = credit.whose == Whose::own;
        ExportMetadata metadata;
        metadata.creator = own ? business_ : credit.name;
        if (metadata.creator.empty()) {
            throw StoreError(
                "Exports name who took a photo, and your own name is not set: set the business "
                "name first.");
        }
        metadata.copyright = "© " + metadata.creator;
        if (photo.moment) {
            metadata.copyright =
                "© " + iso_text(date_of(*photo.moment)).substr(0, 4) + " " + metadata.creator;
        }
        metadata.credit_line = credit.line.value_or(own ? business_ : "");
        metadata.caption = wishes_.caption.empty() ? usual_caption(photo) : wishes_.caption;
        metadata.shows_people = !shown.nobody;
        metadata.youngest = youngest_of(shown);
        metadata.no_data_mining = wishes_.no_data_mining;
        return metadata;
    }

    // Nothing when the age of somebody who may be the youngest was not told.
    std::optional<AgeBand> youngest_of(const PhotoToShow& shown) const {
        std::optional<AgeBand> youngest;
        bool told = true;
        for (const ShownPerson& person : shown.people) {
            const auto age = age_on(person.consents, date_of(now_));
            told = told && age;
            if (age && (!youngest || *age < *youngest)) youngest = age;
        }
        return told || (youngest && is_child(*youngest)) ? youngest : std::nullopt;
    }

    // "low bun, plait, back": nothing of her.
    std::string usual_caption(const Photo& photo) {
        std::string caption;
        const auto add = [&](std::string_view part) {
            if (!caption.empty()) caption += ", ";
            caption += part;
        };
        if (photo.tags.look) {
            for (const LookFact& fact : library_.look_facts().of(*photo.tags.look)) {
                if (fact.fact == Fact::family) add(fact.value);
            }
        }
        if (photo.tags.angle) add(word(*photo.tags.angle));
        return caption;
    }

    cv::Mat picture_of(const Photo& photo, const std::optional<HairOnly>& hair_only) {
        cv::Mat picture = hair_only ? confirmed_picture(library_, decoder_, *hair_only)
                                    : picture_the_right_way_round(library_, decoder_, photo);
        if (const auto aspect = width_over_height(wishes_.shape)) {
            picture = shaped(picture, *aspect);
        } else if (wishes_.long_edge) {
            picture = shrink_to(picture, *wishes_.long_edge);
        }
        if (wishes_.line.empty()) return picture;
        picture = picture.clone();
        draw_(picture, wishes_.line);
        return picture;
    }

    // Exactly of its proportions where it is made smaller: 1080 by 1920, and not by 1919.
    cv::Mat shaped(const cv::Mat& picture, double aspect) {
        const cv::Mat cut = picture(window_of_shape(picture.size(), aspect, finder_.head(picture)));
        if (!wishes_.long_edge || cut.rows <= *wishes_.long_edge) return cut;
        const auto width = static_cast<int>(std::lround(*wishes_.long_edge * aspect));
        cv::Mat smaller;
        cv::resize(cut, smaller, {std::max(1, width), *wishes_.long_edge}, 0, 0, cv::INTER_AREA);
        return smaller;
    }

    // In the ledger first: a file out there that it does not know could never be taken down.
    Exported write(const Photo& photo, const Verdict& verdict, bool hair_only,
                   std::span<const std::byte> jpeg) {
        Exported exported;
        exported.photo = photo.id;
        exported.photo_name = photo.file.name;
        exported.photo_sha256 = photo.file.sha256;
        exported.use = wishes_.use;
        exported.at = now_;
        exported.sha256 = sha256(jpeg);
        exported.bytes = static_cast<std::int64_t>(jpeg.size());
        exported.under = verdict.under;
        exported.hair_only = hair_only;
        Transaction entry(library_.database());
        const Path file = std::filesystem::absolute(wishes_.folder).lexically_normal() /
                          export_name(wishes_.use, library_.ledger().next_id());
        exported.file = file.string();
        exported.id = library_.ledger().add(exported);
        entry.commit();
        try {
            write_once(library_.disk(), file, jpeg);
        } catch (const DiskError&) {
            library_.ledger().take_down(exported.id, {date_of(now_), "It was never written."});
            throw;
        }
        return exported;
    }

    Library& library_;
    Decoder& decoder_;
    const DrawLine& draw_;
    const ExportWishes& wishes_;
    LocalTime now_;
    PhotoGate gate_;
    std::string business_;
    std::vector<std::byte> icc_;
    HeadFinder finder_;
};

}  // namespace

std::string_view word(ExportShape shape) {
    return find_word(shape_words, shape);
}

std::optional<ExportShape> parse_export_shape(std::string_view text) {
    return find_value(shape_words, text);
}

std::optional<int> usual_long_edge(Use use) {
    if (use == Use::print || use == Use::competition) return std::nullopt;
    return screen_long_edge;
}

std::vector<PhotoGone> export_photos(Library& library, Decoder& decoder, const DrawLine& draw,
                                     std::span<const Photo> photos, const ExportWishes& wishes,
                                     LocalTime now) {
    refuse_inside_library(library, wishes.folder);
    library.disk().make_folders(std::filesystem::absolute(wishes.folder));
    bring_pairs_up_to_date(library);
    look_for_heads_in(library, decoder, {photos.begin(), photos.end()});
    Exporter exporter(library, decoder, draw, wishes, now);
    std::vector<PhotoGone> gone;
    for (const Photo& photo : photos) {
        gone.push_back(exporter.send(library.photos().find(photo.id).value_or(photo)));
    }
    return gone;
}

}  // namespace quarterturn
