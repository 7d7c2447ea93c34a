#include "indexer/looks/round_the_head.h"

#include <algorithm>
#include <map>

#include "indexer/rules/burst.h"

namespace quarterturn {
namespace {

std::vector<Photo> photos_that_wait(Library& library, const Look& look) {
    auto photos = library.photos().around_look(look);
    std::erase_if(photos, [&](const Photo& photo) {
        return !waits_for_its_place(photo) || (photo.tags.look && photo.tags.look != look.id);
    });
    return photos;
}

std::vector<WaitingPhoto> folded(const std::vector<Photo>& photos) {
    std::map<PhotoId, std::vector<PhotoId>> behind;  // the sharpest and those behind it
    std::map<PhotoId, PhotoId> sharpest;
    for (const auto& burst : find_bursts(photos)) {
        behind[burst.front()] = {burst.begin() + 1, burst.end()};
        for (auto other = burst.begin() + 1; other != burst.end(); ++other) {
            sharpest[*other] = burst.front();
        }
    }
    std::vector<WaitingPhoto> waiting;
    for (const Photo& photo : photos) {
        if (!sharpest.contains(photo.id)) waiting.push_back({photo, behind[photo.id]});
    }
    return waiting;
}

}  // namespace

std::vector<PhotoId> WaitingPhoto::all() const {
    std::vector<PhotoId> ids{photo.id};
    ids.insert(ids.end(), others.begin(), others.end());
    return ids;
}

RoundTheHead round_the_head(Library& library, LookId look) {
    RoundTheHead round{look_state(library, look), {}, {}};
    round.looks = library.looks().of_client(round.state.look.client);
    round.waiting = folded(photos_that_wait(library, round.state.look));
    return round;
}

}  // namespace quarterturn
