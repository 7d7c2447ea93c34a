// What the program does not load it cannot be attacked through, and does not wait for.

#include "tests/app/program.h"

namespace quarterturn {
namespace {

TEST(Libraries, OfWhatOpensPhotosAreNotInTheProgram) {
#ifdef QUARTERTURN_SANITIZED
    GTEST_SKIP() << "True of what is shipped; the sanitized program is compiled in larger pieces.";
#endif
    const std::string all = output_of("ldd " + shell_word(QTURN_PROGRAM));
    ASSERT_NE(all.find("libsqlite3"), std::string::npos) << all;
    for (const char* library :
         {"libheif", "libde265", "libavcodec", "libtiff", "libwebp", "libexiv2"}) {
        EXPECT_EQ(all.find(library), std::string::npos) << all;
    }
}

}  // namespace
}  // namespace quarterturn
