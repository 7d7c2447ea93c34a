#include "indexer/sheet/page.h"

namespace quarterturn {
namespace {

TEST(Paper, SizesAreThoseOfIso216AndOfUsLetter) {
    const auto is = [](Paper paper, double width, double height) {
        const Size upright = paper_size(paper, false);
        const Size across = paper_size(paper, true);
        EXPECT_DOUBLE_EQ(upright.width, width);
        EXPECT_DOUBLE_EQ(upright.height, height);
        EXPECT_DOUBLE_EQ(across.width, height);
        EXPECT_DOUBLE_EQ(across.height, width);
    };
    is(Paper::a3, 297, 420);
    is(Paper::a4, 210, 297);
    is(Paper::a5, 148, 210);
    is(Paper::letter, 8.5 * 25.4, 11 * 25.4);
}

}  // namespace
}  // namespace quarterturn
