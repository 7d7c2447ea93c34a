// Pairs of the demo photos in a library: how they compare, and which looks are alike.

#include <gtest/gtest.h>

#include <fstream>

#include "indexer/looks/pairs.h"
#include "indexer/portfolio/more_like_this.h"
#include "indexer/portfolio/pair_figures.h"
#include "indexer/worker/confined.h"
#include "tests/support/demo_truth.h"
#include "tests/support/example_library.h"
#include "tests/support/files.h"

namespace quarterturn {
namespace {

const Date today = parse_date("2026-11-07").value();

// Client b before and after at her trial and after on the day; a and c at their trials.
class Portfolio : public testing::Test, public ExampleLibrary {
  protected:
    Portfolio() {
        looks["b"] = look;
        for (const char* who : {"a", "c"}) {
            Look more = library.looks().find(look).value();
            more.name = std::string("Look of ") + who;
            looks[who] = library.looks().add(more);
        }
        Sitting morning = library.sittings().find(trial).value();
        morning.kind = SittingKind::wedding_day;
        morning.starts = at("2026-11-21T08:00");
        morning.ends = at("2026-11-21T12:00");
        day = library.sittings().add(morning);
        for (const char* file : {"phone/20260822_141036.jpg", "phone/20260822_153044_back.jpg",
                                 "phone/20261010_114715.heic", "phone/20261107_100502.jpg",
                                 "phone/20261107_120241.jpg", "phone/20261114_150327.jpg",
                                 "phone/20261114_150309.jpg", "phone/20261114_164105.jpg"}) {
            add(file);
        }
    }

    static CsvRow truth_of(const std::string& file) {
        for (const auto& row : demo_truth()) {
            if (row.at("file") == file) return row;
        }
        throw std::runtime_error(file);
    }

    static Path demo_file(const std::string& file) {
        return Path(QUARTERTURN_DEMO_PHOTOS "/photos") / file;
    }

    void add(const std::string& file) {
        const CsvRow row = truth_of(file);
        Photo photo = example_photo(Path(file).filename().string());
        photo.file.orientation = std::stoi(row.at("orientation"));
        photo.file.sha256 = sha256(read_bytes(demo_file(file)));
        photo.measures = {5, 0, 0.5, 0, 0};
        photo.tags.sitting = row.at("sitting") == "b-day" ? day : trial;
        photo.tags.look = looks.at(row.at("client"));
        photo.tags.stage = parse_stage(row.at("stage"));
        photo.tags.angle = parse_angle(row.at("angle"));
        library.photos().add(photo);
        const Path target = library.photo_file(photo);
        std::filesystem::create_directories(target.parent_path());
        std::filesystem::copy_file(demo_file(file), target);
    }

    Pair pair_of(const std::string& client, PairKind kind) {
        const PairWall wall(library, today);
        for (const Pair& pair : wall.pairs()) {
            if (pair.made.place.look == looks.at(client) && pair.made.place.kind == kind) {
                return pair;
            }
        }
        throw std::runtime_error("no such pair");
    }

    PairFigures figures(const Pair& pair) {
        HeadFinder finder;
        return measure_pair(library, *decoder, finder, pair,
                            library.photos().find(pair.made.first).value(),
                            library.photos().find(pair.made.second).value());
    }

    std::unique_ptr<Decoder> decoder = make_confined_decoder();
    std::map<std::string, LookId> looks;
    SittingId day;
};

TEST_F(Portfolio, PhotosOfOneSittingAreLitAlike) {
    const PairFigures same = figures(pair_of("b", PairKind::before_and_after));
    ASSERT_TRUE(same.light);
    EXPECT_LT(std::abs(same.light->exposure_ev), 0.1);
    EXPECT_LT(same.light->white_balance_de00, 1);
    EXPECT_TRUE(judge_fairness(same).unfair.empty());
}

TEST_F(Portfolio, PhotosOfTwoRoomsAreCalledUnfair) {
    const PairFigures other = figures(pair_of("b", PairKind::trial_and_day));
    ASSERT_TRUE(other.light);
    EXPECT_GT(other.light->white_balance_de00, 3);
    EXPECT_FALSE(judge_fairness(other).unfair.empty());
}

// The truth of the renderer: how high the head is in shares of the picture.
TEST_F(Portfolio, SizeOfTheHeadIsThatOfTheTruthWhereItIsTold) {
    const PairFigures measured = figures(pair_of("b", PairKind::trial_and_day));
    const auto height = [](const std::string& file) {
        const CsvRow row = truth_of(file);
        return std::hypot(std::stod(row.at("head_bottom_x")) - std::stod(row.at("head_top_x")),
                          std::stod(row.at("head_bottom_y")) - std::stod(row.at("head_top_y"))) /
               std::stod(row.at("height"));
    };
    ASSERT_TRUE(measured.size);
    EXPECT_NEAR(*measured.size,
                height("phone/20261010_114715.heic") / height("phone/20260822_153044_back.jpg"),
                0.03);
}

TEST_F(Portfolio, PointsThatSheSetGoBeforeTheHeadThatIsFound) {
    const Pair pair = pair_of("b", PairKind::before_and_after);
    library.head_points().set(pair.made.first, {{0.5, 0.2}, {0.5, 0.5}});
    library.head_points().set(pair.made.second, {{0.5, 0.1}, {0.5, 0.7}});
    const PairFigures measured = figures(pair);
    ASSERT_TRUE(measured.size);
    EXPECT_NEAR(*measured.size, 2, 1e-6);
    EXPECT_NEAR(*measured.turn_degrees, 0, 1e-6);
}

TEST_F(Portfolio, FindsHerOwnLookFromAnotherPictureOfIt) {
    const MeasureReport report = measure_hair(library, *decoder);
    EXPECT_EQ(report.measured, 4);
    EXPECT_TRUE(report.failed.empty());
    EXPECT_EQ(measure_hair(library, *decoder).measured, 0) << "once is enough";
    const auto found =
        pairs_like(library, *decoder, demo_file("phone/20261107_120242.jpg"), Angle::back, 9);
    ASSERT_FALSE(found.empty());
    EXPECT_EQ(library.pairs().find(found.front().pair)->made.place.look, looks.at("a"));
    EXPECT_FALSE(found.front().reasons.empty());
    EXPECT_THROW(pairs_like(library, *decoder, demo_file("phone/20261105_182240.jpg"), {}, 9),
                 std::runtime_error)
        << "it shows no head";
}

TEST_F(Portfolio, ALookIsNotLikeItselfNorWhatSheRefused) {
    measure_hair(library, *decoder);
    const Pair own = pair_of("b", PairKind::before_and_after);
    const auto found = pairs_like(library, own, 9);
    ASSERT_EQ(found.size(), 1U);
    const Pair other = library.pairs().find(found.front().pair).value();
    EXPECT_EQ(other.made.place.look, looks.at("a"));
    refuse(library, other.id, true);
    EXPECT_TRUE(pairs_like(library, own, 9).empty());
}

}  // namespace
}  // namespace quarterturn
