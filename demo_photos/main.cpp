// render_demo_photos OUT_DIR [--size PIXELS] [--only WORD] [--jobs N]
//
// Renders the demo photos into OUT_DIR/photos and writes OUT_DIR/truth.csv and
// OUT_DIR/tags.json. --size is the longer side (2000 when left out). With
// --only, photos whose path holds WORD are rendered and nothing else changes.

#include "demo_photos/device/photo_file.h"
#include "demo_photos/picture/still_life.h"
#include "demo_photos/story/devices.h"
#include "demo_photos/story/truth.h"

#include <atomic>
#include <fstream>
#include <iostream>
#include <map>
#include <mutex>
#include <thread>

#include <opencv2/core/utility.hpp>

namespace {

using namespace quarterturn::demo;

struct Wish {
    std::filesystem::path out;
    int size = 2000;
    std::string only;
    int jobs = 1;
};

/// The committed set has to stay below 20 MB.
constexpr int most_bytes_at_full_size = 360000;

cv::Size upright_size(const Shot& shot, int longer) {
    return {(shot.device == Device::phone ? longer * 3 / 4 : longer * 7 / 10) / 2 * 2,
            longer / 2 * 2};
}

void save(const Shot& shot, const cv::Mat& linear, const Wish& wish) {
    cv::Mat pixels = develop(linear, shot.develop);
    if (shot.mirrored) {
        cv::flip(pixels, pixels, 1);
    }
    const auto file = wish.out / "photos" / shot.file;
    std::filesystem::create_directories(file.parent_path());
    const PhotoFacts facts = facts_of(shot);
    const double scale = wish.size / 2000.0;
    const int most = static_cast<int>(most_bytes_at_full_size * std::max(0.1, scale * scale));
    if (shot.heic) {
        write_heic(file, pixels, facts, shot.turned_in_file, most);
    } else {
        write_jpeg(file, pixels, facts, most);
    }
}

Wish read_wish(int count, char** words) {
    Wish wish;
    for (int i = 1; i < count; ++i) {
        const std::string word = words[i];
        const bool more = i + 1 < count;
        if (word == "--size" && more) {
            wish.size = std::stoi(words[++i]);
        } else if (word == "--only" && more) {
            wish.only = words[++i];
        } else if (word == "--jobs" && more) {
            wish.jobs = std::max(1, std::stoi(words[++i]));
        } else if (word.rfind("--", 0) != 0 && wish.out.empty()) {
            wish.out = word;
        } else {
            throw std::runtime_error("Unknown word: " + word);
        }
    }
    if (wish.out.empty()) {
        throw std::runtime_error(
            "Usage: render_demo_photos OUT_DIR [--size PIXELS] [--only WORD] [--jobs N]");
    }
    return wish;
}

void render_all(const Wish& wish) {
    const std::vector<Shot> shots = all_shots();
    std::vector<std::string> rows(shots.size());
    // Photos of one head in one style share the work of building it.
    std::map<std::pair<Who, Style>, std::vector<std::size_t>> by_head;
    for (std::size_t i = 0; i < shots.size(); ++i) {
        if (shots[i].file.find(wish.only) != std::string::npos) {
            by_head[{shots[i].who, shots[i].style}].push_back(i);
        }
    }
    std::vector<std::vector<std::size_t>> groups;
    for (const auto& [head, members] : by_head) {
        groups.push_back(members);
    }
    std::atomic<std::size_t> next{0};
    std::mutex talk;
    std::map<Who, std::shared_ptr<const Clay>> clays;
    std::mutex moulding;
    const auto clay_of = [&](Who who, const Face& face, float fineness) {
        const std::lock_guard<std::mutex> lock(moulding);
        auto& clay = clays[who];
        if (!clay) {
            clay = mould(face, fineness);
        }
        return clay;
    };
    const auto work = [&] {
        for (std::size_t g = next++; g < groups.size(); g = next++) {
            const Shot& first = shots[groups[g].front()];
            const float fineness = std::min(1.0F, static_cast<float>(wish.size) / 1400.0F);
            const Sitter sitter = sitter_for(first.who, first.style);
            Head head(sitter, fineness, clay_of(first.who, sitter.face, fineness));
            for (const std::size_t i : groups[g]) {
                const Shot& shot = shots[i];
                const cv::Size size = upright_size(shot, wish.size);
                Picture picture;
                if (shot.still_life) {
                    picture.linear = paint_still_life(size);
                } else {
                    picture = head.photograph(shot.view, shot.light, size);
                }
                save(shot, picture.linear, wish);
                rows[i] = truth_row(shot, picture.marks, size);
                const std::lock_guard<std::mutex> lock(talk);
                std::cout << shot.file << std::endl;
            }
        }
    };
    std::vector<std::thread> workers;
    for (int j = 0; j < wish.jobs; ++j) {
        workers.emplace_back(work);
    }
    for (std::thread& worker : workers) {
        worker.join();
    }
    if (!wish.only.empty()) {
        return;
    }
    std::ofstream truth(wish.out / "truth.csv");
    truth << truth_header() << '\n';
    for (const std::string& row : rows) {
        truth << row << '\n';
    }
    std::ofstream(wish.out / "tags.json") << tags_json(shots);
}

}  // namespace

int main(int count, char** words) {
    try {
        cv::setNumThreads(1);
        render_all(read_wish(count, words));
        return 0;
    } catch (const std::exception& problem) {
        std::cerr << problem.what() << '\n';
        return 1;
    }
}
