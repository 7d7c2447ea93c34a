#pragma once
// What a backup has to say of files, in lines for people; nothing where there is nothing.

#include <string>
#include <vector>

#include "indexer/backup/backup.h"

namespace quarterturn {

std::vector<std::string> lacking_lines(const BackupReport& report);
// What the drive no longer held whole.
std::vector<std::string> lost_there_lines(const BackupReport& report);
std::vector<std::string> same_disk_lines(const BackupReport& report);
std::vector<std::string> gone_lines(const BackupReport& report);
std::vector<std::string> staying_lines(const BackupReport& report);

}  // namespace quarterturn
