#include "indexer/record/shot_list.h"

namespace quarterturn {

std::string shot_text(const Shot& shot) {
    return std::string(word(shot.stage)) + ", " + std::string(word(shot.angle));
}

ShotList default_shot_list() {
    ShotList list;
    for (const Stage stage : {Stage::before, Stage::after}) {
        for (const Angle angle : quarter_angles) list.push_back({{stage, angle}, Need::required});
    }
    for (const Angle angle : further_angles) {
        list.push_back({{Stage::after, angle}, Need::nice_to_have});
    }
    return list;
}

}  // namespace quarterturn
