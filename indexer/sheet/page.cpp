#include "indexer/sheet/page.h"

namespace quarterturn {

Size paper_size(Paper paper, bool landscape) {
    Size size;
    switch (paper) {
        case Paper::a3:
            size = {297, 420};
            break;
        case Paper::a4:
            size = {210, 297};
            break;
        case Paper::a5:
            size = {148, 210};
            break;
        case Paper::letter:
            size = {215.9, 279.4};
            break;
    }
    if (landscape) std::swap(size.width, size.height);
    return size;
}

}  // namespace quarterturn
