#include "indexer/portfolio/more_like_this.h"

#include <algorithm>
#include <array>
#include <span>
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
#include "indexer/store/some_records.h"

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

constexpr std::size_t fewest_looked_at = 256;

std::vector<LikeCandidate> candidates(Library& library, std::optional<LookId> but,
                                      std::optional<Angle> angle) {
    std::vector<LikeCandidate> result;
    for (PairHair& pair : hair_looks_of(library).of_pairs(angle)) {
        if (pair.look == but) continue;
        result.push_back({pair.pair, pair.look, {}, std::move(pair.hair)});
    }
    return result;
}

void add_facts(Library& library, std::span<LikeCandidate> candidates) {
    std::vector<LookId> ids;
    for (const LikeCandidate& candidate : candidates) ids.push_back(candidate.look);
    const auto looks = SomeRecords(library.database()).looks_of_clients_of(ids);
    const auto facts = facts_of_these_looks(library, looks);
    for (LikeCandidate& candidate : candidates) {
        const auto own = facts.find(candidate.look);
        if (own != facts.end()) candidate.facts = own->second;
    }
}

// Facts only ever make a pair less like, so that those of the likest by picture are read first, and
// of no others once none of them can come before the last that is wanted.
std::vector<LikePair> likest_of(Library& library, const LookFacts& facts, const HairLook& hair,
                                std::vector<LikeCandidate> all, std::size_t at_most) {
    const std::vector<double> least = order_by_least_unlikeness(hair, all);
    std::size_t looked_at = 0;
    for (std::size_t next = std::max(at_most, fewest_looked_at);; next *= 2) {
        const std::size_t until = std::min(next, all.size());
        add_facts(library, std::span(all).subspan(looked_at, until - looked_at));
        looked_at = until;
        auto likest = more_like(facts, hair, std::span(all).first(looked_at), at_most);
        const bool done = looked_at == all.size() ||
                          (likest.size() == at_most && likest.back().unlikeness < least[looked_at]);
        if (done) return likest;
    }
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
    if (library.only_to_look()) return {};
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

std::vector<LikePair> pairs_like(Library& library, const Pair& pair, std::size_t at_most) {
    bring_pairs_up_to_date(library);
    const PairPlace& place = pair.made.place;
    const std::array own{place.look};
    const auto facts =
        facts_of_these_looks(library, SomeRecords(library.database()).looks_of_clients_of(own));
    const auto told = facts.find(place.look);
    return likest_of(library, told == facts.end() ? LookFacts{} : told->second,
                     hair_looks_of(library).of(pair.made.second),
                     candidates(library, place.look, place.angle), at_most);
}

std::vector<LikePair> pairs_like(Library& library, Decoder& decoder, const Path& picture,
                                 std::optional<Angle> angle, std::size_t at_most) {
    HeadFinder finder;
    const HairLook hair = describe_hair(finder, small_picture_in(library, decoder, picture));
    if (!hair.told()) {
        throw std::runtime_error("No head was found in " + picture.filename().string() +
                                 ": use a picture in which it stands free of the border.");
    }
    bring_pairs_up_to_date(library);
    return likest_of(library, {}, hair, candidates(library, std::nullopt, angle), at_most);
}

}  // namespace quarterturn
