#include "indexer/portfolio/pair_export.h"

#include <array>

#include "indexer/image/encode.h"
#include "indexer/image/profile.h"
#include "indexer/intake/heads.h"
#include "indexer/looks/pair_gate.h"
#include "indexer/portfolio/leaving.h"
#include "indexer/portfolio/pair_figures.h"

namespace quarterturn {
namespace {

struct BothPhotos {
    Photo first;
    Photo second;
};

Photo photo_there(Library& library, PhotoId id) {
    if (auto photo = library.photos().find(id)) return std::move(*photo);
    throw StoreError("A photo of the pair is no longer in the library: list the pairs again.");
}

// With what the search for faces found.
BothPhotos both_looked_at(Library& library, Decoder& decoder, const Pair& pair) {
    look_for_heads_in(
        library, decoder,
        {photo_there(library, pair.made.first), photo_there(library, pair.made.second)});
    return {photo_there(library, pair.made.first), photo_there(library, pair.made.second)};
}

std::string joined_lines(const std::vector<std::string>& sentences) {
    std::string text;
    for (const std::string& each : sentences) text += (text.empty() ? "" : " ") + each;
    return text;
}

std::string two_lines(const std::string& one, const std::string& other) {
    if (one.empty() || other.empty()) return one + other;
    return one + "\n" + other;
}

class PairExporter {
  public:
    PairExporter(Library& library, Decoder& decoder, const Pair& pair,
                 const PairExportWishes& wishes, LocalTime now)
        : library_(library),
          decoder_(decoder),
          pair_(pair),
          wishes_(wishes),
          now_(now),
          both_(both_looked_at(library, decoder, pair)),
          gate_(library) {}

    PairGone send(TextRuler& ruler, const DrawPage& draw) {
        gone_.against = against_both(gate_, both_.first, both_.second, wishes_.use, date_of(now_));
        if (!gone_.against.empty()) return gone_;
        if (pair_.choice.refused) {
            gone_.problem = "You refused this pair: let it be listed again first.";
            return gone_;
        }
        try {
            refuse_inside_library(library_, std::filesystem::absolute(wishes_.file).parent_path());
            refuse_names(library_, std::array{both_.first, both_.second}, "caption",
                         wishes_.picture.caption);
            write(ruler, draw);
        } catch (const std::runtime_error& error) {
            gone_.problem = error.what();
        }
        return gone_;
    }

  private:
    void write(TextRuler& ruler, const DrawPage& draw) {
        ExportMetadata metadata = told();
        const PairFigures figures =
            measure_pair(library_, decoder_, finder_, pair_, both_.first, both_.second);
        const std::string not_alike = not_taken_alike(figures);
        const PairPicture picture = pair_picture(library_, decoder_, finder_, ruler, both_.first,
                                                 both_.second, wish(not_alike));
        if (!picture.refused.empty()) throw std::runtime_error(picture.refused);
        const Fairness fairness = judge_fairness(figures);
        gone_.done = picture.done;
        gone_.remarks = picture.remarks;
        gone_.unfair = fairness.unfair;
        metadata.caption = two_lines(metadata.caption, not_alike);
        if (wishes_.tell_inside) {
            metadata.caption = two_lines(metadata.caption, what_was_done(fairness));
        }
        const cv::Mat drawn = draw(picture.document.pages.front());
        const auto jpeg =
            with_metadata(jpeg_bytes(drawn, wishes_.quality, print_dpi), metadata, srgb_profile());
        const Path file = std::filesystem::absolute(wishes_.file).lexically_normal();
        gone_.exported = write_into_ledger(
            library_, {entry(both_.first), entry(both_.second)}, [&](ExportId) { return file; },
            jpeg);
    }

    ExportMetadata told() {
        const Date on = date_of(now_);
        const PhotoToShow first = gate_.to_show(both_.first);
        const PhotoToShow second = gate_.to_show(both_.second);
        ExportMetadata metadata = told_of_both(told_of(library_, both_.first, first, on),
                                               told_of(library_, both_.second, second, on));
        metadata.caption = wishes_.picture.caption.empty()
                               ? usual_caption(library_, both_.second.tags)
                               : wishes_.picture.caption;
        metadata.no_data_mining = wishes_.no_data_mining;
        gone_.credit_line = photographers_lines(first, second);
        return metadata;
    }

    // Her own stands in the business line where she wants it.
    static std::string photographers_lines(const PhotoToShow& first, const PhotoToShow& second) {
        std::string lines;
        for (const PhotoToShow* shown : {&first, &second}) {
            if (shown->credit->whose != Whose::photographer) continue;
            const std::string& line = *shown->credit->line;
            if (lines != line) lines = two_lines(lines, line);
        }
        return lines;
    }

    PairPictureWish wish(const std::string& not_alike) const {
        PairPictureWish wish = wishes_.picture;
        wish.not_alike = not_alike;
        wish.business_line = two_lines(wish.business_line, gone_.credit_line);
        return wish;
    }

    std::string what_was_done(const Fairness& fairness) const {
        return joined_lines(gone_.done) + "\nAs they were taken: " + joined_lines(fairness.figures);
    }

    Exported entry(const Photo& photo) {
        return entry_of(photo, wishes_.use, gate_.may_go(photo, wishes_.use, date_of(now_)), now_);
    }

    Library& library_;
    Decoder& decoder_;
    const Pair& pair_;
    const PairExportWishes& wishes_;
    LocalTime now_;
    BothPhotos both_;
    PhotoGate gate_;
    HeadFinder finder_;
    PairGone gone_;
};

}  // namespace

std::vector<std::string> against_pair(Library& library, Decoder& decoder, const Pair& pair, Use use,
                                      Date on) {
    const BothPhotos both = both_looked_at(library, decoder, pair);
    PhotoGate gate(library);
    return against_both(gate, both.first, both.second, use, on);
}

PairGone export_pair(Library& library, Decoder& decoder, TextRuler& ruler, const DrawPage& draw,
                     const Pair& pair, const PairExportWishes& wishes, LocalTime now) {
    return PairExporter(library, decoder, pair, wishes, now).send(ruler, draw);
}

}  // namespace quarterturn
