#include "indexer/record/shot_list.h"

#include <algorithm>

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

void set_line(ShotList& list, const ShotLine& line) {
    const auto same = std::find_if(list.begin(), list.end(),
                                   [&](const ShotLine& other) { return other.shot == line.shot; });
    if (same == list.end()) {
        list.push_back(line);
    } else {
        *same = line;
    }
}

bool drop_line(ShotList& list, const Shot& shot) {
    return std::erase_if(list, [&](const ShotLine& line) { return line.shot == shot; }) > 0;
}

}  // namespace quarterturn
