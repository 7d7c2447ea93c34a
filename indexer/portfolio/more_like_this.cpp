#include "indexer/portfolio/more_like_this.h"

#include <stdexcept>

#include "indexer/image/hair_look.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/looks/pairs.h"
#include "indexer/looks/shared_facts.h"
#include "indexer/portfolio/inspiration.h"
#include "indexer/portfolio/pair_figures.h"
#include "indexer/store/hair_look_table.h"

namespace quarterturn {
namespace {

HairLookTable hair_looks_of(Library& library) {
    return {library.database(), hair_look_version};
}

HeadFinder& hair_finder_of_this_thread() {
    thread_local HeadFinder finder;
    return finder;
}

struct Measured {
    HairLook look;
    std::string refused;
};

Measured measure_one(Library& library, Decoder& decoder, const Photo& photo) {
    const cv::Mat bgr = picture_to_compare(library, decoder, photo);
    if (bgr.empty()) return {{}, photo.file.name + " cannot be read, and was not measured."};
    return {describe_hair(hair_finder_of_this_thread(), bgr), {}};
}

bool is_candidate(const Pair& pair, std::optional<LookId> but, std::optional<Angle> angle) {
    const PairPlace& place = pair.made.place;
    return !pair.choice.refused && place.look != but && (!angle || place.angle == angle);
}

using HairLooks = std::map<PhotoId, HairLook>;
using FactsOfLooks = std::map<LookId, LookFacts>;

HairLooks hair_looks_from(Library& library, std::optional<Angle> angle) {
    HairLookTable table = hair_looks_of(library);
    return angle ? table.of_pairs_from(*angle) : table.all();
}

std::vector<LikeCandidate> candidates(Library& library, const FactsOfLooks& facts,
                                      const HairLooks& hair, std::optional<LookId> but,
                                      std::optional<Angle> angle) {
    std::vector<LikeCandidate> result;
    for (const Pair& pair : library.pairs().all()) {
        if (!is_candidate(pair, but, angle)) continue;
        LikeCandidate candidate{pair.id, pair.made.place.look, {}, {}};
        const auto own_facts = facts.find(candidate.look);
        if (own_facts != facts.end()) candidate.facts = own_facts->second;
        const auto own_hair = hair.find(pair.made.second);
        if (own_hair != hair.end()) candidate.hair = own_hair->second;
        result.push_back(std::move(candidate));
    }
    return result;
}

}  // namespace

cv::Mat small_picture_in(Library& library, Decoder& decoder, const Path& file) {
    const Decoded decoded =
        picture_from_elsewhere(library.disk(), decoder, file, thumbnail_long_edge);
    if (!decoded.ok()) {
        throw std::runtime_error(file.filename().string() +
                                 " cannot be compared: " + decoded.refused);
    }
    return shrink_to(decoded.bgr, thumbnail_long_edge);
}

MeasureReport measure_hair(Library& library, Decoder& decoder,
                           const std::function<void(std::int64_t, std::int64_t)>& progress,
                           std::stop_token stop) {
    const OneThreadEach one_thread_each;
    bring_pairs_up_to_date(library);
    HairLookTable table = hair_looks_of(library);
    const std::vector<Photo> photos = library.photos().these(table.still_to_measure());
    OrderedWork<Measured> work{
        photos.size(), worker_count(),
        [&](std::size_t i) { return measure_one(library, decoder, photos[i]); }, stop};
    MeasureReport report;
    std::size_t done = 0;
    for (; const auto measured = work.next(); ++done) {
        if (measured->refused.empty()) {
            table.keep(photos[done], measured->look);
            ++report.measured;
        } else {
            report.failed.push_back(measured->refused);
        }
        if (progress) progress(static_cast<std::int64_t>(done + 1), std::ssize(photos));
    }
    report.stopped = done < photos.size();
    return report;
}

std::vector<LikePair> pairs_like(Library& library, const Pair& pair) {
    bring_pairs_up_to_date(library);
    const PairPlace& place = pair.made.place;
    const HairLooks hair = hair_looks_from(library, place.angle);
    FactsOfLooks facts = facts_of_looks(library);
    const auto others = candidates(library, facts, hair, place.look, place.angle);
    const auto own = hair.find(pair.made.second);
    return more_like(facts[place.look], own == hair.end() ? HairLook{} : own->second, others);
}

std::vector<LikePair> pairs_like(Library& library, Decoder& decoder, const Path& picture,
                                 std::optional<Angle> angle) {
    HeadFinder finder;
    const HairLook hair = describe_hair(finder, small_picture_in(library, decoder, picture));
    if (!hair.told()) {
        throw std::runtime_error("No head was found in " + picture.filename().string() +
                                 ": use a picture in which it stands free of the border.");
    }
    bring_pairs_up_to_date(library);
    return more_like({}, hair,
                     candidates(library, facts_of_looks(library), hair_looks_from(library, angle),
                                std::nullopt, angle));
}

}  // namespace quarterturn
