#include "indexer/image/cascade.h"

#include "indexer/parts/part.h"

namespace quarterturn {

std::unique_ptr<Cascade> load_cascade(const std::string& file) {
    static auto* const load =
        part_function<Cascade*(const char*)>("face-cascades", "quarterturn_load_cascade");
    return std::unique_ptr<Cascade>(load(file.c_str()));
}

}  // namespace quarterturn
