#include "indexer/looks/passing_on.h"

#include <algorithm>

namespace quarterturn {
namespace {

bool stands_against_own_work(const Against& against) {
    return against.obstacle == Obstacle::declined || against.obstacle == Obstacle::withdrawn ||
           against.obstacle == Obstacle::ended || against.obstacle == Obstacle::somebody_elses;
}

}  // namespace

std::vector<AgainstPhoto> against_passing_on(Library& library, std::span<const Photo> photos,
                                             Use use, Date on) {
    PhotoGate gate(library);
    std::vector<AgainstPhoto> all;
    for (const Photo& photo : photos) {
        for (const Against& against : gate.may_go(photo, use, on).against) {
            all.push_back({photo.file.name, against.words});
        }
    }
    return all;
}

std::vector<std::string> against_own_work(Library& library, std::span<const Photo> photos,
                                          Date on) {
    PhotoGate gate(library);
    std::vector<std::string> sentences;
    for (const Photo& photo : photos) {
        for (const Against& against : gate.may_go(photo, Use::own_record, on).against) {
            if (!stands_against_own_work(against)) continue;
            sentences.push_back(photo.file.name + ": " + against.words);
        }
    }
    return sentences;
}

void refuse_against_own_work(Library& library, std::span<const Photo> photos, Date on) {
    const auto sentences = against_own_work(library, photos, on);
    if (sentences.empty()) return;
    std::string all =
        "Nothing was written, since it shows what may not be kept even for your own "
        "work, or is never passed on; tag those photos away, or erase them.";
    for (const std::string& sentence : sentences) all += "\n  " + sentence;
    throw StoreError(all);
}

std::vector<Photo> photos_on(const WeddingBoard& board) {
    std::vector<Photo> photos;
    const auto add = [&](const Photo& photo) {
        if (std::ranges::find(photos, photo.id, &Photo::id) == photos.end()) {
            photos.push_back(photo);
        }
    };
    for (const BoardClient& client : board.clients) {
        for (const BoardLook& look : client.looks) {
            for (const BoardShot& shot : look.shots) {
                if (shot.photo) add(*shot.photo);
            }
            for (const BoardStep& step : look.steps) {
                for (const Photo& photo : step.photos) add(photo);
            }
        }
    }
    return photos;
}

}  // namespace quarterturn
