#include "indexer/portfolio/export.h"

#include <algorithm>
#include <cmath>
#include <opencv2/imgproc.hpp>

#include "indexer/image/encode.h"
#include "indexer/image/head.h"
#include "indexer/image/profile.h"
#include "indexer/image/shape.h"
#include "indexer/intake/heads.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/looks/consents.h"
#include "indexer/looks/pairs.h"
#include "indexer/portfolio/hair_only.h"
#include "indexer/portfolio/leaving.h"
#include "indexer/record/word_list.h"

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

std::string flawed_words(const Photo& photo) {
    if (photo.flaws.empty() || !photo.tags.accepted_because.empty()) return {};
    std::string flaws;
    for (const Flaw flaw : photo.flaws) {
        flaws += (flaws.empty() ? "" : ", ") + std::string(word(flaw));
    }
    return "Look at it again before it is shown: " + flaws + ".";
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
          icc_(srgb_profile()) {}

    PhotoGone send(const Photo& photo) {
        PhotoGone gone{photo, {}, {}, {}, {}, {}, {}};
        const PhotoToShow shown = gate_.to_show(photo);
        const auto [verdict, hair_only] = gate_.way_out(photo, wishes_.use, date_of(now_));
        for (const Against& against : verdict.against) gone.against.push_back(against.words);
        if (!verdict.may()) return gone;
        if (!hair_only) gone.doubts = doubts(photo, library_.credits().seen(photo.id));
        std::ranges::move(problems_with_papers(library_, verdict.under),
                          std::back_inserter(gone.doubts));
        gone.flawed = flawed_words(photo);
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
        ExportMetadata metadata = told_of(library_, photo, shown, date_of(now_));
        metadata.caption =
            wishes_.caption.empty() ? usual_caption(library_, photo.tags) : wishes_.caption;
        metadata.no_data_mining = wishes_.no_data_mining;
        return metadata;
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

    Exported write(const Photo& photo, const Verdict& verdict, bool hair_only,
                   std::span<const std::byte> jpeg) {
        const auto file = [this](ExportId id) {
            return std::filesystem::absolute(wishes_.folder).lexically_normal() /
                   export_name(wishes_.use, id);
        };
        Exported entry = entry_of(photo, wishes_.use, verdict, now_);
        entry.hair_only = hair_only;
        library_.disk().make_folders(std::filesystem::absolute(wishes_.folder));
        return write_into_ledger(library_, {std::move(entry)}, file, jpeg).front();
    }

    Library& library_;
    Decoder& decoder_;
    const DrawLine& draw_;
    const ExportWishes& wishes_;
    LocalTime now_;
    PhotoGate gate_;
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
    refuse_names(library, photos, "caption", wishes.caption);
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
