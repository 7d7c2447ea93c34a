#include "indexer/intake/preview.h"

#include <unordered_map>
#include <unordered_set>

#include "indexer/disk/checksum.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/photo_file.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/time_left.h"
#include "indexer/intake/walk.h"
#include "indexer/rules/sorting.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

// EXIF in a JPEG is at most 64 KB and stands at the front (EXIF 2.32 on APP1), behind little else.
constexpr std::int64_t front_bytes = 72 * 1024;
// Threads that wait for each other after each file take as long for that as for a look at it.
constexpr std::size_t at_once = 16;

struct Glimpse {
    std::optional<LocalTime> taken;
    Device device;
    std::string sha256;  // empty where no other file can be the same
};

using Glimpsed = std::variant<LeftAlone, Refused, Glimpse>;

Device nameless(Device device) {
    device.id = {};
    device.clock_shift = {};
    return device;
}

// What one thread does with one file.
class Glancer {
  public:
    Glancer(FileSystem& disk, const std::vector<StoredFile>& stored,
            const std::vector<FoundFile>& files)
        : disk_(disk) {
        for (const StoredFile& file : stored) ++times_[file.bytes];
        for (const FoundFile& found : files) ++times_[found.state.bytes];
    }

    Glimpsed glance(const FoundFile& found) const try {
        if (!may_be_photo(disk_, found.file)) return LeftAlone{};
        if (found.state.bytes > largest_photo_file) return too_large(found.state.bytes);
        const Bytes front = disk_.read_front(found.file, front_bytes);
        const FileKind kind = sniff(front);
        if (!is_photo(kind)) {
            return std::visit([](auto what) -> Glimpsed { return what; },
                              no_photo(found.file, kind, front.empty()));
        }
        return look_at(found, front);
    } catch (const DiskError& error) {
        return Refused{error.what()};
    } catch (const GivenUp& reason) {
        return Refused{reason.what()};
    }

  private:
    Glimpse look_at(const FoundFile& found, const Bytes& front) const {
        const FileMetadata at_front = read_metadata_confined(front);
        const bool may_be_twin = times_.at(found.state.bytes) > 1;
        if (!may_be_twin && at_front.taken) return glimpse_of(at_front);
        const Bytes whole = disk_.read(found.file, largest_photo_file);
        Glimpse glimpse = glimpse_of(at_front.taken ? at_front : read_metadata_confined(whole));
        if (may_be_twin) glimpse.sha256 = sha256(whole);
        return glimpse;
    }

    static Glimpse glimpse_of(const FileMetadata& says) {
        Glimpse glimpse;
        if (says.taken) glimpse.taken = says.taken->local;
        glimpse.device = {.id = {}, .make = says.make, .model = says.model, .serial = says.serial};
        return glimpse;
    }

    FileSystem& disk_;
    std::unordered_map<std::int64_t, int> times_;  // how many files have so many bytes
};

class Preview {
  public:
    Preview(Library& library, const ImportWishes& wishes)
        : library_(library),
          wishes_(wishes),
          stored_(library.photos().stored_files()),
          binned_(library.bin().checksums()),
          devices_(library.devices().all()),
          sittings_(library.sittings().all()),
          hours_(sittings_) {
        for (const StoredFile& file : stored_) known_.insert(file.sha256);
    }

    ImportPreview run() {
        Found found = walk(library_, wishes_.sources);
        preview_.left_alone = std::move(found.left_alone);
        preview_.refused = std::move(found.refused);
        progress_.total = std::ssize(found.files);
        look_at_all(drop_seen(std::move(found.files)));
        gather();
        return std::move(preview_);
    }

  private:
    std::vector<FoundFile> drop_seen(std::vector<FoundFile> files) {
        std::erase_if(files, [&](const FoundFile& found) {
            const auto sha256 = library_.seen().recall(found.file, found.state);
            if (!sha256 || !known_.contains(*sha256)) return false;
            is_here(found.file, *sha256);
            ++progress_.done;
            return true;
        });
        return files;
    }

    void is_here(const Path& file, const std::string& sha256) {
        preview_.already_here.push_back(file);
        if (binned_.contains(sha256)) ++preview_.in_bin;
    }

    void look_at_all(const std::vector<FoundFile>& files) {
        const Glancer glancer{library_.disk(), stored_, files};
        TimeLeft time{std::ssize(files)};
        const auto glance = [&](std::size_t group) {
            std::vector<Glimpsed> seen;
            const std::size_t end = std::min(files.size(), (group + 1) * at_once);
            for (std::size_t i = group * at_once; i < end; ++i) {
                seen.push_back(glancer.glance(files[i]));
            }
            return seen;
        };
        const std::size_t groups = (files.size() + at_once - 1) / at_once;
        OrderedWork<std::vector<Glimpsed>> work{groups, worker_count(), glance, wishes_.stop};
        std::size_t next = 0;
        while (const auto group = work.next()) {
            for (const Glimpsed& glimpsed : *group) {
                const FoundFile& found = files[next++];
                std::visit([&](const auto& what) { meet(found, what); }, glimpsed);
                time.done(1);
                tell(found.file, time);
            }
        }
        preview_.stopped = next < files.size();
    }

    void meet(const FoundFile& found, const LeftAlone&) {
        preview_.left_alone.push_back(found.file);
    }

    void meet(const FoundFile& found, const Refused& refused) {
        preview_.refused.push_back({found.file, refused.reason});
    }

    void meet(const FoundFile& found, const Glimpse& glimpse) {
        const bool twin = !glimpse.sha256.empty() && !known_.insert(glimpse.sha256).second;
        if (twin) {
            is_here(found.file, glimpse.sha256);
            return;
        }
        ++preview_.fresh;
        preview_.bytes += found.state.bytes;
        ++photos_of(glimpse.device);
        place(moment_of(glimpse));
    }

    int& photos_of(const Device& device) {
        const auto known =
            std::ranges::find(preview_.devices, nameless(device), &PhotosOfDevice::device);
        if (known != preview_.devices.end()) return known->photos;
        return preview_.devices.emplace_back(PhotosOfDevice{nameless(device), 0}).photos;
    }

    std::optional<LocalTime> moment_of(const Glimpse& glimpse) const {
        if (!glimpse.taken) return std::nullopt;
        const auto known = std::ranges::find(devices_, nameless(glimpse.device), nameless);
        if (known == devices_.end()) return glimpse.taken;
        return *glimpse.taken + known->clock_shift;
    }

    void place(const std::optional<LocalTime>& moment) {
        if (!moment) {
            ++preview_.undated;
            return;
        }
        preview_.first = std::min(preview_.first.value_or(*moment), *moment);
        preview_.last = std::max(preview_.last.value_or(*moment), *moment);
        const auto fits = hours_.at(*moment);
        if (fits.empty()) ++preview_.in_no_sitting;
        if (fits.size() > 1) ++preview_.in_several;
        if (fits.size() == 1) ++in_sitting_[fits.front()];
    }

    void gather() {
        for (const Sitting& sitting : sittings_) {
            const auto found = in_sitting_.find(sitting.id);
            if (found != in_sitting_.end()) preview_.sittings.push_back({sitting, found->second});
        }
        std::ranges::stable_sort(preview_.devices, std::greater{}, &PhotosOfDevice::photos);
    }

    void tell(const Path& file, const TimeLeft& time) {
        ++progress_.done;
        progress_.file = file;
        progress_.left = time.left();
        if (wishes_.progress) wishes_.progress(progress_);
    }

    Library& library_;
    const ImportWishes& wishes_;
    const std::vector<StoredFile> stored_;
    const std::set<std::string> binned_;  // checksums
    const std::vector<Device> devices_;
    const std::vector<Sitting> sittings_;
    const SittingsByTime hours_;
    std::unordered_set<std::string> known_;  // checksums of the library, and of the files met
    std::unordered_map<SittingId, int> in_sitting_;
    ImportPreview preview_;
    ImportProgress progress_;
};

}  // namespace

ImportPreview preview_import(Library& library, const ImportWishes& wishes) {
    return Preview{library, wishes}.run();
}

}  // namespace quarterturn
