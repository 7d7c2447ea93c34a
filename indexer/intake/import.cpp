#include "indexer/intake/import.h"

#include <algorithm>
#include <tuple>

#include "indexer/intake/begun_intake.h"
#include "indexer/intake/move_lock.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/record_batch.h"
#include "indexer/intake/sort_steps.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/time_left.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

constexpr std::size_t batch_photos = 24;  // chosen by measurement, see tests/bench
// While one waits for the disk, another decodes.
constexpr unsigned threads_for_each_core = 2;
constexpr std::size_t batch_seen = 1000;
constexpr auto not_put_back =
    "It belongs to the library, and its file there could not be put back. ";

class ImportRun {
  public:
    ImportRun(Library& library, Decoder& decoder, const ImportWishes& wishes)
        : library_(library),
          wishes_(wishes),
          incoming_(library),
          unfinished_(library),
          copies_(library),
          binned_(library.bin().checksums()),
          taker_(library, decoder, copies_, claims_, incoming_),
          recorder_(library, incoming_, unfinished_) {}

    ImportReport run() {
        Found found = walk(library_, wishes_.sources);
        report_.left_alone = std::move(found.left_alone);
        report_.refused = std::move(found.refused);
        progress_.total = std::ssize(found.files);
        take_all(drop_seen(std::move(found.files)));
        take_left_behind();
        put_in_order();
        return std::move(report_);
    }

  private:
    // Files that were taken in before, and are as they were then, need not be read.
    std::vector<FoundFile> drop_seen(std::vector<FoundFile> files) {
        const Reading together(library_.database());
        SeenTable table = library_.seen();
        std::erase_if(files, [&](const FoundFile& found) {
            const auto sha256 = table.recall(found.file, found.state);
            const bool seen = sha256 && copies_.known_whole(*sha256, found.file, table);
            if (seen) {
                is_here(found.file, *sha256);
                ++progress_.done;
            }
            return seen;
        });
        return files;
    }

    void is_here(const Path& file, const std::string& sha256) {
        report_.already_here.push_back(file);
        if (binned_.contains(sha256)) report_.in_bin.push_back(file);
    }

    void take_all(const std::vector<FoundFile>& files) {
        std::int64_t bytes = 0;
        for (const FoundFile& found : files) bytes += found.state.bytes;
        TimeLeft time{bytes};
        OrderedWork<Taken> work{files.size(), threads_for_each_core * worker_count(),
                                [&](std::size_t i) { return taker_.take(files[i]); }, wishes_.stop};
        std::size_t next = 0;
        try {
            while (const auto taken = work.next()) {
                const FoundFile& found = files[next++];
                std::visit([&](const auto& what) { meet(found, what); }, *taken);
                time.done(found.state.bytes);
                tell(found.file, time);
                if (batch_.size() >= batch_photos || seen_.size() >= batch_seen) record();
            }
            record();
        } catch (const DiskError& error) {
            record_what_is_whole();
            throw DiskError{error.what() + kept_text(), error.file(), error.error_number()};
        } catch (const StoreError& error) {
            throw StoreError{error.what() + kept_text()};
        } catch (const NoWorker&) {
            record();
            throw;
        }
        report_.stopped = next < files.size();
    }

    // What failed before this is the one to tell of.
    void record_what_is_whole() {
        try {
            record();
        } catch (const DiskError&) {
            return;
        }
    }

    std::string kept_text() const {
        const auto kept = std::to_string(imported_.size());
        return " Brought in and kept before that: " + kept + (kept == "1" ? " photo." : " photos.");
    }

    // Copies that an interrupted run put in their place without a record, of files that are not
    // among the sources.
    void take_left_behind() {
        for (const Path& file : unfinished_.settle()) take_left_behind(file);
        record();
        unfinished_.settle();
    }

    void take_left_behind(const Path& file) try {
        const FoundFile found{file, library_.disk().state(file)};
        const Taken taken = taker_.take(found);
        const auto* const content = std::get_if<Content>(&taken);
        if (content == nullptr || waits(content->sha256)) return;
        Examined examined = content->examined.get();
        if (examined.refused.empty()) batch_.push_back({found, std::move(examined)});
    } catch (const DiskError& error) {
        refuse(file, error);
    }

    void refuse(const Path& file, const DiskError& error) {
        if (!incoming_.goes_on_after(error)) throw;
        report_.refused.push_back({file, error.what()});
    }

    void meet(const FoundFile& found, const LeftAlone&) {
        report_.left_alone.push_back(found.file);
    }

    void meet(const FoundFile& found, const Refused& refused) {
        report_.refused.push_back({found.file, refused.reason});
    }

    void meet(const FoundFile& found, const AlreadyHere& here) {
        is_here(found.file, here.sha256);
        seen_.push_back({found, here.sha256});
        if (here.copy) seen_.push_back({*here.copy, here.sha256});
    }

    // No copy could be made where this throws.
    void meet(const FoundFile& found, const Content& content) try {
        if (claims_.is_recorded(content.sha256) || waits(content.sha256)) {
            return meet(found, AlreadyHere{content.sha256});
        }
        Examined examined = content.examined.get();
        if (!examined.refused.empty()) return meet(found, Refused{examined.refused});
        batch_.push_back({found, std::move(examined)});
        seen_.push_back({found, content.sha256});
    } catch (const DiskError& error) {
        refuse(found.file, error);
    }

    bool waits(const std::string& sha256) const {
        return std::ranges::any_of(batch_, [&](const NewPhoto& fresh) {
            return fresh.examined.photo.file.sha256 == sha256;
        });
    }

    void record() {
        const auto batch = std::exchange(batch_, {});
        const auto seen = std::exchange(seen_, {});
        if (batch.empty() && seen.empty()) return;
        const auto recorded = recorder_.record(batch, seen);
        for (std::size_t i = 0; i < recorded.size(); ++i) {
            tell_of(batch[i].source.file, recorded[i]);
        }
    }

    void tell_of(const Path& source, const Recorded& recorded) {
        if (!recorded.set_aside.empty()) report_.set_aside.push_back(recorded.set_aside);
        if (!recorded.refused.empty()) {
            report_.refused.push_back({source, recorded.refused});
            return;
        }
        const Photo& photo = recorded.photo;
        claims_.recorded(photo.file.sha256);
        if (!recorded.not_put_back.empty()) {
            report_.refused.push_back({source, not_put_back + recorded.not_put_back});
        } else if (recorded.put_back) {
            is_here(source, photo.file.sha256);
            report_.put_back.push_back(photo.id);
        } else {
            imported_.push_back({!photo.moment, photo.moment.value_or(LocalTime{}), photo.id});
        }
    }

    void put_in_order() {
        if (imported_.empty()) return;
        std::ranges::sort(imported_);
        for (const auto& [undated, moment, id] : imported_) report_.imported.push_back(id);
        place_by_time(library_);
        report_.not_moved = refused_files(move_to_folders(library_));
    }

    void tell(const Path& file, const TimeLeft& time) {
        ++progress_.done;
        progress_.file = file;
        progress_.left = time.left();
        if (wishes_.progress) wishes_.progress(progress_);
    }

    const OneThreadEach one_thread_each_;
    const KeptMemory kept_memory_;
    Library& library_;
    const ImportWishes& wishes_;
    Incoming incoming_;
    Unfinished unfinished_;
    const StoredCopies copies_;
    const std::set<std::string> binned_;  // checksums
    ContentClaims claims_;
    Taker taker_;
    BatchRecorder recorder_;
    ImportReport report_;
    ImportProgress progress_;
    std::vector<NewPhoto> batch_;
    std::vector<SeenFile> seen_;
    std::vector<std::tuple<bool, LocalTime, PhotoId>> imported_;
};

// As when a card is pulled.
bool is_gone(FileSystem& disk, const Path& file) try {
    return !disk.exists(file);
} catch (const DiskError&) {
    return true;
}

// Else it is offered once more, and finds that all of it is here.
void note_finished(Library& library, const std::vector<Path>& sources) try {
    BegunIntake::once(library).finish(sources);
} catch (const StoreError&) {
    return;
}

}  // namespace

ImportReport import_photos(Library& library, Decoder& decoder, const ImportWishes& wishes) {
    library.database().refuse_if_replaced();
    const MoveLock lock{library};
    if (!lock.held()) throw StoreError{photos_are_being_moved};
    if (wishes.remember) BegunIntake::once(library).add(wishes.sources);
    ImportReport report = ImportRun{library, decoder, wishes}.run();
    const bool any_is_gone = std::ranges::any_of(report.refused, [&](const RefusedFile& refused) {
        return is_gone(library.disk(), refused.file);
    });
    if (!report.stopped && !any_is_gone) note_finished(library, wishes.sources);
    return report;
}

}  // namespace quarterturn
