#include "indexer/store/small_picture.h"

namespace quarterturn {

Path small_picture_file(const Path& library_folder, std::string_view sha256) {
    return library_folder / "cache" / sha256.substr(0, 2) / (std::string{sha256} + ".jpg");
}

}  // namespace quarterturn
