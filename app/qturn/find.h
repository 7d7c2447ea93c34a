#pragma once
// Rows by what she calls them: a name, or a number as qturn lists it ("12" or "#12"). All throw
// WrongUse: when nothing has the name, and when several have it, listing them with their numbers.

#include <string>
#include <vector>

#include "indexer/store/library.h"

namespace quarterturn {

Client find_client(Library& library, const std::string& name);
Wedding find_wedding(Library& library, const std::string& name);
Sitting find_sitting(Library& library, const std::string& number);
Look find_look(Library& library, const std::string& name);
Pair find_pair(Library& library, const std::string& number);  // brings the pairs up to date
Inspiration find_inspiration(Library& library, const std::string& number);
PhotoSelection find_selection(Library& library, const std::string& name);
Device find_device(Library& library, const std::string& name);  // "make model", or the model alone

std::vector<PhotoId> ids_of(const std::vector<Photo>& photos);

// By original file name, number, numbers from to ("12-20"), or the first six or more digits of the
// SHA-256. Each photo once, in the order they were named.
std::vector<Photo> find_photos(Library& library, const std::vector<std::string>& names);
Photo find_photo(Library& library, const std::string& name);

// The same among those in the bin, without numbers from to.
std::vector<Photo> find_photos_in_bin(Library& library, const std::vector<std::string>& names);

}  // namespace quarterturn
