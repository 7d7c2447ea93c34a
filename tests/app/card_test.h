#pragma once
// A library, and a card of photos beside it.

#include <opencv2/core.hpp>

#include "tests/app/program.h"
#include "tests/support/made_once.h"
#include "tests/support/test_pictures.h"

namespace quarterturn {

// A JPEG that differs from all others, with what exiftool is told to write into it.
inline void make_photo(const std::filesystem::path& file, int number, const std::string& tags) {
    make_once(file, std::to_string(number) + ' ' + tags, [&] {
        cv::Mat picture(200, 160, CV_8UC3);
        cv::RNG random(static_cast<std::uint64_t>(number) + 1);
        random.fill(picture, cv::RNG::UNIFORM, 40, 215);
        write_bytes(file, encoded(picture, ".jpg"));
        output_of("exiftool -q -overwrite_original " + tags + ' ' + shell_word(file));
    });
}

class CardTest : public QturnTest {
  protected:
    void SetUp() override {
        said({"init"});
        std::filesystem::create_directories(card / "DCIM");
    }

    nlohmann::json photos(Arguments arguments = {}) {
        arguments.insert(arguments.begin(), "photos");
        return answer(arguments)["photos"];
    }

    std::filesystem::path card = folder / "card";
};

}  // namespace quarterturn
