#pragma once

#include <QString>

#include "indexer/looks/wedding_board.h"

namespace quarterturn {

struct StepsDone {
    int done = 0;
    int steps = 0;
};
StepsDone steps_done(const BoardClient& client);  // of all her looks

QString name_of(const BoardClient& client);
QString role_and_time(const BoardClient& client);   // "bride · ready by 12:30"
QString seats_in_words(const BoardClient& client);  // "In the chair 07:40 to 08:25"; may be empty
QString done_in_words(const StepsDone& done);       // "3 of 7 done"
QString pins_in_words(const BoardLook& look);       // "Pins: 14 of 22 in"; may be empty
QString look_in_words(const BoardLook& look);       // "Ceremony: low bun"

}  // namespace quarterturn
