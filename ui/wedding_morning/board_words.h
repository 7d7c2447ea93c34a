#pragma once

#include <QString>

#include "indexer/looks/wedding_board.h"

namespace quarterturn {

struct StepsDone {
    int done = 0;
    int steps = 0;
};
StepsDone steps_done(const BoardClient& client);  // of the look she wears first

QString name_of(const BoardClient& client);
QString role_and_time(const BoardClient& client);  // "bride · ready by 12:30"
QString done_in_words(const StepsDone& done);      // "3 of 7 done"
QString look_in_words(const BoardLook& look);      // "Ceremony: low bun"

}  // namespace quarterturn
