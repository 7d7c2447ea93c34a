#include "indexer/rules/burst.h"

#include <algorithm>
#include <bit>
#include <map>
#include <numeric>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace quarterturn {
namespace {

using Group = std::vector<const Photo*>;
using Groups = std::vector<std::vector<PhotoId>>;

bool sharper(const Photo* one, const Photo* other) {
    const auto rank = [](const Photo& photo) {
        return std::tuple(!photo.flaws.empty(), -photo.measures.focus, photo.id);
    };
    return rank(*one) < rank(*other);
}

void keep_group(Group group, Groups& groups) {
    if (group.size() < 2) return;
    std::sort(group.begin(), group.end(), sharper);
    std::vector<PhotoId> ids;
    for (const Photo* photo : group) ids.push_back(photo->id);
    groups.push_back(std::move(ids));
}

Group by_device_and_time(std::span<const Photo> photos) {
    Group timed;
    for (const Photo& photo : photos) {
        if (photo.file.device && photo.moment) timed.push_back(&photo);
    }
    std::sort(timed.begin(), timed.end(), [](const Photo* one, const Photo* other) {
        return std::tuple(*one->file.device, *one->moment, one->id) <
               std::tuple(*other->file.device, *other->moment, other->id);
    });
    return timed;
}

bool follows_in_burst(const Photo& before, const Photo& photo) {
    return before.file.device == photo.file.device && *photo.moment - *before.moment <= burst_gap &&
           bits_apart(before.fingerprint, photo.fingerprint) <= burst_bits;
}

// Which things belong together, when it is told in pairs (disjoint sets).
class Togetherness {
  public:
    explicit Togetherness(std::size_t count) : parent_(count) {
        std::iota(parent_.begin(), parent_.end(), std::size_t{0});
    }

    std::size_t leader(std::size_t item) {
        while (parent_[item] != item) {
            parent_[item] = parent_[parent_[item]];
            item = parent_[item];
        }
        return item;
    }

    void join(std::size_t one, std::size_t other) { parent_[leader(one)] = leader(other); }

  private:
    std::vector<std::size_t> parent_;
};

// Photos by fingerprint: each fingerprint once, however many photos share it.
struct Distinct {
    std::vector<Fingerprint> fingerprints;
    std::vector<Group> photos;
};

Distinct distinct_fingerprints(std::span<const Photo> photos) {
    std::unordered_map<Fingerprint, std::size_t> places;
    Distinct distinct;
    for (const Photo& photo : photos) {
        if (photo.fingerprint == 0) continue;
        const auto [place, added] =
            places.try_emplace(photo.fingerprint, distinct.fingerprints.size());
        if (added) {
            distinct.fingerprints.push_back(photo.fingerprint);
            distinct.photos.emplace_back();
        }
        distinct.photos[place->second].push_back(&photo);
    }
    return distinct;
}

// Cut into one band more than bits may differ, two fingerprints within reach have a band in common
// (the pigeonhole principle), so only those that share a band are compared.
constexpr int bands = near_duplicate_bits + 1;

Fingerprint band(Fingerprint fingerprint, int number) {
    const int from = 64 * number / bands;
    const int to = 64 * (number + 1) / bands;
    return (fingerprint >> from) & ((Fingerprint{1} << (to - from)) - 1);
}

void join_within_bucket(const std::vector<std::size_t>& bucket,
                        const std::vector<Fingerprint>& fingerprints, Togetherness& together) {
    for (std::size_t i = 0; i < bucket.size(); ++i) {
        for (std::size_t j = i + 1; j < bucket.size(); ++j) {
            if (bits_apart(fingerprints[bucket[i]], fingerprints[bucket[j]]) <= near_duplicate_bits)
                together.join(bucket[i], bucket[j]);
        }
    }
}

void join_alike(const std::vector<Fingerprint>& fingerprints, Togetherness& together) {
    for (int number = 0; number < bands; ++number) {
        std::unordered_map<Fingerprint, std::vector<std::size_t>> buckets;
        for (std::size_t i = 0; i < fingerprints.size(); ++i) {
            buckets[band(fingerprints[i], number)].push_back(i);
        }
        for (const auto& [ignored, bucket] : buckets) {
            join_within_bucket(bucket, fingerprints, together);
        }
    }
}

}  // namespace

int bits_apart(Fingerprint one, Fingerprint other) {
    return std::popcount(one ^ other);
}

Groups find_bursts(std::span<const Photo> photos) {
    Groups groups;
    Group group;
    for (const Photo* photo : by_device_and_time(photos)) {
        if (!group.empty() && !follows_in_burst(*group.back(), *photo)) {
            keep_group(std::exchange(group, {}), groups);
        }
        group.push_back(photo);
    }
    keep_group(std::move(group), groups);
    return groups;
}

Groups find_near_duplicates(std::span<const Photo> photos) {
    const Distinct distinct = distinct_fingerprints(photos);
    Togetherness together(distinct.fingerprints.size());
    join_alike(distinct.fingerprints, together);

    std::map<std::size_t, Group> by_leader;
    for (std::size_t i = 0; i < distinct.photos.size(); ++i) {
        Group& group = by_leader[together.leader(i)];
        group.insert(group.end(), distinct.photos[i].begin(), distinct.photos[i].end());
    }
    Groups groups;
    for (auto& [ignored, group] : by_leader) keep_group(std::move(group), groups);
    std::sort(groups.begin(), groups.end());
    return groups;
}

}  // namespace quarterturn
