#pragma once
// Ada's trial with a pair of photos.

#include "tests/app/noise_photo.h"
#include "tests/app/program.h"

namespace quarterturn {

// Ada's trial: two photos of one wall, before and after, and a third; made by tools outside of the
// program.
class PairsTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        const std::filesystem::path card = folder / "card";
        std::filesystem::create_directories(card);
        make_noise_photo(card / "IMG_1.jpg", 1, "2026:11:07 10:12:03");
        make_noise_photo(card / "IMG_2.jpg", 2, "2026:11:07 12:02:00");
        make_noise_photo(card / "IMG_3.jpg", 3, "2026:11:07 12:03:00");
        said({"client", "add", "Ada Lindqvist"});
        said({"sitting", "add", "1", "--starts", "2026-11-07T10:00", "--ends", "2026-11-07T13:00"});
        said({"look", "add", "1", "Low twisted bun", "--sitting", "1"});
        said({"recipe", "set", "1", "--part", "hair_on_the_day.colour=chestnut", "--part",
              "parting=side, on her left"});
        answer({"import", card});
        said({"sort"});
        said({"tag", "IMG_1.jpg", "--angle", "back", "--stage", "before"});
        said({"tag", "IMG_2.jpg", "IMG_3.jpg", "--angle", "back", "--stage", "after", "--look",
              "1"});
    }

    nlohmann::json pairs(Arguments arguments = {}) {
        arguments.insert(arguments.begin(), {"pairs", "list"});
        return answer(arguments)["pairs"];
    }

    // The number of the only pair.
    std::string only() {
        const nlohmann::json all = pairs();
        EXPECT_EQ(all.size(), 1U);
        return std::to_string(all.at(0)["id"].get<int>());
    }
};

}  // namespace quarterturn
