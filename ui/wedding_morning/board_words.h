#pragma once

#include <QStringList>

#include "indexer/looks/wedding_board.h"

namespace quarterturn {

QStringList lines_of(const std::vector<std::string>& sentences);
QString name_of(const BoardClient& client);
QString role_and_time(const BoardClient& client);  // "bride · ready by 12:30"
QString done_in_words(const BoardClient& client);  // "3 of 7 done"
QString look_in_words(const BoardLook& look);      // "Ceremony: low bun"

}  // namespace quarterturn
