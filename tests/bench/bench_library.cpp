// bench_library FOLDER PHOTOS: makes a library of so many photos in FOLDER, as full_library.h says.
// Every photo has a file and a small picture: links to a few that are drawn, since what the window
// does is the same for all.

#include <cstdlib>
#include <opencv2/imgproc.hpp>

#include "indexer/disk/clock.h"
#include "indexer/image/decode.h"
#include "indexer/intake/thumbnails.h"
#include "tests/bench/full_library.h"

namespace {

using namespace quarterturn;

constexpr std::size_t pictures_drawn = 16;
const cv::Size picture_size{1500, 2000};
const cv::Size small_size{384, 512};

Bytes draw(cv::RNG& random, const cv::Size& size) {
    cv::Mat picture(size, CV_8UC3);
    random.fill(picture, cv::RNG::UNIFORM, 40, 215);
    cv::GaussianBlur(picture, picture, {0, 0}, 3);
    return as_jpeg(picture);
}

// The first few are written, all others are links to them.
class Drawn {
  public:
    explicit Drawn(const cv::Size& size) : size_(size) {}

    void put(FileSystem& disk, const Path& file) {
        std::filesystem::create_directories(file.parent_path());
        if (drawn_.size() < pictures_drawn) {
            disk.write_new(file, draw(random_, size_));
            drawn_.push_back(file);
        } else {
            std::filesystem::create_hard_link(drawn_[linked_++ % pictures_drawn], file);
        }
    }

  private:
    cv::Size size_;
    cv::RNG random_{20261107};
    std::vector<Path> drawn_;
    std::size_t linked_ = 0;
};

void make_pictures(Library& library) {
    Drawn whole(picture_size);
    Drawn small(small_size);
    for (const StoredFile& file : library.photos().stored_files()) {
        whole.put(library.disk(), library.folder() / file.path);
        small.put(library.disk(), thumbnail_file(library, file.sha256));
    }
}

}  // namespace

int main(int count, char** words) {
    if (count != 3) return 2;
    Library library = Library::create(words[1]);
    fill_library(library, std::atoi(words[2]), date_of(local_now()));
    make_pictures(library);
}
