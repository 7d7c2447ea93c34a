// Pictures without a face are her own work until they are confirmed, and are gated as such.

#include "tests/app/card_test.h"

namespace quarterturn {
namespace {

using nlohmann::json;

// A photo from the front, in which the search finds a face.
class HairOnlyGate : public CardTest {
  protected:
    void SetUp() override {
        CardTest::SetUp();
        said({"client", "add", "Ada Lindqvist"});
        said({"look", "add", "Ada Lindqvist", "Low bun"});
        std::filesystem::copy_file(
            std::filesystem::path(QUARTERTURN_DEMO_PHOTOS) / "photos/phone/20260822_141003.jpg",
            card / "DCIM/front.jpg");
        said({"import", card});
        said({"tag", "front.jpg", "--look", "Low bun", "--angle", "front", "--stage", "after"});
    }

    static Arguments hair_only(const Arguments& more) {
        Arguments arguments{"photo", "hair-only", "front.jpg"};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return arguments;
    }
    std::size_t files_out() { return std::filesystem::exists(out) ? files_in(out).size() : 0; }

    std::filesystem::path out = folder / "to look at";
};

TEST_F(HairOnlyGate, NothingIsWrittenThatLeavesTheFaceIn) {
    const Arguments whole{"--keep", "0,0,1,1", "--to", out};
    EXPECT_NE(complained(hair_only(whole), 1).find("what may be a face"), std::string::npos);
    const Arguments speck{"--cover", "0.1,0.1,0.02,0.02", "--to", out};
    EXPECT_NE(complained(hair_only(speck), 1).find("what may be a face"), std::string::npos);
    EXPECT_FALSE(std::filesystem::exists(out));
    const json proposed = answer(hair_only({"--to", out}));
    for (const json& each : proposed["pictures"]) {
        EXPECT_EQ(each["file"].is_null(), each["face_found"] == true) << each;
    }
    EXPECT_GT(files_out(), 0U);
}

TEST_F(HairOnlyGate, IsRefusedWhereHerOwnRecordIsRefused) {
    const Arguments top{"--keep", "0,0,1,0.2", "--to", out};
    const std::string file = answer(hair_only(top))["pictures"][0]["file"];
    const auto written = files_out();
    Arguments confirm{"--keep", "0,0,1,0.2", "--confirm", file};
    said({"consent", "decline", "Ada Lindqvist", "--for", "own record", "--how", "message"});
    for (const Arguments& way : {top, Arguments{"--to", out}, confirm}) {
        EXPECT_NE(complained(hair_only(way), 1).find("front.jpg: Ada Lindqvist does not want"),
                  std::string::npos);
    }
    said({"consent", "grant", "Ada Lindqvist", "--for", "own record", "--hair-only", "--how",
          "message"});
    said({"photo", "whose", "front.jpg", "--somebody-else"});
    for (const Arguments& way : {top, Arguments{"--to", out}, confirm}) {
        EXPECT_NE(complained(hair_only(way), 1).find("somebody else's"), std::string::npos);
    }
    EXPECT_EQ(files_out(), written);
    said({"photo", "whose", "front.jpg", "--own"});
    said(hair_only(confirm));
    said({"consent", "withdraw", "Ada Lindqvist", "--how", "message"});
    complained(hair_only(top), 1);
    said(hair_only({"--forget"}));  // nothing leaves by that
}

}  // namespace
}  // namespace quarterturn
