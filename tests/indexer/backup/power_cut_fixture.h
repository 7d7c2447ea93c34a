#pragma once
// A job on a disk that records, and what the disk would hold had the power gone at each sync of it,
// with nothing, all or some of what was not synced.

#include <optional>

#include "indexer/store/library.h"
#include "tests/support/recording_disk.h"
#include "tests/support/recording_sqlite.h"
#include "tests/support/temporary_folder.h"

namespace quarterturn {

struct Cut {
    Path disk;           // laid out as it was then
    std::size_t moment;  // in the log
    bool at_the_end;     // the job had answered
    int number;          // of the cut
};

class PowerCut : public testing::Test {
  protected:
    template <class Job>
    void record(Job job) {
        std::filesystem::create_directories(root);
        log.emplace(root);
        RecordingDisk disk(*log);
        const RecordingSqlite sqlite(*log);
        job(disk);
    }

    // Asks `check` of every moment before a sync and of the end, with each chance; in the usual
    // run, of each seventh sync or however many are given.
    template <class Check>
    void at_every_cut(Check check, int usual_step = 7) {
        std::minstd_rand random{7};
        const auto& events = log->events();
        const int step = std::getenv("POWER_CUTS") == nullptr ? usual_step : 1;
        int syncs = 0;
        int number = 0;
        for (std::size_t moment = 0; moment <= events.size(); ++moment) {
            const bool at_the_end = moment == events.size();
            if (!at_the_end && events[moment].what != Happened::sync_file &&
                events[moment].what != Happened::sync_folder) {
                continue;
            }
            if (!at_the_end && syncs++ % step != 0) continue;
            for (const double chance : {0.0, 1.0, 0.5, 0.5}) {
                const Path after = folder / "after";
                log->lay_out(moment, chance, random, after);
                SCOPED_TRACE("event " + std::to_string(moment) + " of " +
                             std::to_string(events.size()) + ", chance " + std::to_string(chance));
                check(Cut{after, moment, at_the_end, number++});
                std::filesystem::remove_all(after);
                if (HasFatalFailure() || HasNonfatalFailure()) return;
            }
        }
        EXPECT_GE(syncs, 10) << "the job must sync what it writes";
    }

    // A library with photos in it as it lies on the disk, nothing holding it open.
    void place(const Path& library) {
        std::filesystem::create_directories(root);
        std::filesystem::copy(library, root / "library", std::filesystem::copy_options::recursive);
    }

    TemporaryFolder folder;
    Path root = folder / "disk";
    std::optional<DiskLog> log;
};

// Every photo gets the same note, again and again, as one change each time.
class RepeatedTagging {
  public:
    RepeatedTagging(Path library, std::optional<DiskLog>& log)
        : library_(std::move(library)), log_(log) {}

    void run(FileSystem& disk) {
        Library library = Library::open(library_, disk);
        for (int number = 1; number <= changes; ++number) {
            Change change{std::to_string(number), {}, {}};
            for (const Photo& photo : library.photos().all()) {
                Tags tags = photo.tags;
                tags.note = std::to_string(number);
                change.tags.push_back({photo.id, tags});
            }
            library.history().apply(change);
            answered_.push_back(log_->moment());
        }
    }

    void expect_whole_changes(const Cut& cut) const {
        const auto answered = std::ranges::count_if(
            answered_, [&](std::size_t moment) { return moment <= cut.moment; });
        std::set<std::string> notes;
        for (const Photo& photo : Library::open(cut.disk / "library").photos().all()) {
            notes.insert(photo.tags.note);
        }
        ASSERT_EQ(notes.size(), 1U) << "a change is whole";
        const std::string& note = *notes.begin();
        const int kept = note.empty() ? 0 : std::stoi(note);
        EXPECT_GE(kept, answered);
        EXPECT_LE(kept, answered + 1);
    }

  private:
    static constexpr int changes = 8;

    Path library_;
    std::optional<DiskLog>& log_;
    std::vector<std::size_t> answered_;  // the moment in the log
};

}  // namespace quarterturn
