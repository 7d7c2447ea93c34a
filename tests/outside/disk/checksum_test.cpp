// SHA-256 against its standard and an independent program.

#include "indexer/disk/checksum.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "indexer/disk/file_system.h"
#include "tests/support/command.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {
namespace {

// NIST, "Examples with intermediate values" to FIPS 180-4, SHA-256, one and two blocks.
TEST(Sha256, OfTheStandardsOneBlockMessage) {
    EXPECT_EQ(sha256("abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
}

TEST(Sha256, OfTheStandardsTwoBlockMessage) {
    EXPECT_EQ(sha256("abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq"),
              "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
}

// FIPS 180-2, appendix B.3.
TEST(Sha256, OfTheStandardsLongMessage) {
    EXPECT_EQ(sha256(std::string(1'000'000, 'a')),
              "cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
}

// NIST CAVP, SHA256ShortMsg.rsp, Len = 0.
TEST(Sha256, OfNothing) {
    EXPECT_EQ(sha256(""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
}

RC_GTEST_PROP(Sha256, IsWhatSha256sumSays, ()) {
    const auto length = *rc::gen::inRange(0, 200'000);
    const auto bytes =
        *rc::gen::container<Bytes>(static_cast<std::size_t>(length % 1000),
                                   rc::gen::cast<std::byte>(rc::gen::inRange(0, 256)));
    Bytes repeated;
    while (repeated.size() < static_cast<std::size_t>(length) && !bytes.empty()) {
        repeated.insert(repeated.end(), bytes.begin(), bytes.end());
    }
    const TemporaryFolder folder;
    real_file_system().write_new(folder / "file", repeated);
    const std::string said = output_of("sha256sum " + shell_word(folder / "file"));
    RC_ASSERT(sha256(real_file_system().read(folder / "file", any_size)) == said.substr(0, 64));
}

}  // namespace
}  // namespace quarterturn
