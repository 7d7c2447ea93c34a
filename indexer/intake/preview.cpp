#include "indexer/intake/preview.h"

#include <map>
#include <unordered_set>

#include "indexer/intake/glance.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/time_left.h"
#include "indexer/rules/sorting.h"
#include "indexer/worker/confined.h"

namespace quarterturn {
namespace {

// Threads that wait for each other after each file take as long for that as for a look at it.
constexpr std::size_t at_once = 16;

Device nameless(Device device) {
    device.id = {};
    device.clock_shift = {};
    return device;
}

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
        if (!found.files.empty()) start_photo_workers();
        look_at_all(drop_seen(std::move(found.files)));
        gather();
        return std::move(preview_);
    }

  private:
    std::vector<FoundFile> drop_seen(std::vector<FoundFile> files) {
        const Reading together(library_.database());
        SeenTable table = library_.seen();
        std::erase_if(files, [&](const FoundFile& found) {
            const auto sha256 = table.recall(found.file, found.state);
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
        PossibleTwins twins{library_, stored_, files};
        const Glancer glancer{library_, twins};
        TimeLeft time{std::ssize(files)};
        std::vector<Glimpsed> seen;
        const auto glance = [&](std::size_t first, std::size_t count) {
            return glancer.glance(std::span(files).subspan(first, count));
        };
        in_groups(files.size(), glance, [&](Glimpsed glimpsed) {
            if (!marked(glimpsed)) tell(files[seen.size()].file, time);
            seen.push_back(std::move(glimpsed));
        });
        const std::vector<std::size_t> alike = alike_among(seen, files, twins, time);
        const auto read = [&](std::size_t first, std::size_t count) {
            std::vector<Glimpsed> group;
            for (const std::size_t i : std::span(alike).subspan(first, count)) {
                group.push_back(glancer.with_checksum(files[i], std::get<Glimpse>(seen[i])));
            }
            return group;
        };
        std::size_t settled = 0;
        in_groups(alike.size(), read, [&](Glimpsed glimpsed) {
            const std::size_t i = alike[settled++];
            tell(files[i].file, time);
            seen[i] = std::move(glimpsed);
        });
        preview_.stopped = seen.size() < files.size() || settled < alike.size();
        for (std::size_t i = 0; i < seen.size(); ++i) {
            std::visit([&](const auto& what) { meet(files[i], what); }, seen[i]);
        }
    }

    static const Glimpse* marked(const Glimpsed& glimpsed) {
        const auto* glimpse = std::get_if<Glimpse>(&glimpsed);
        return glimpse != nullptr && glimpse->mark ? glimpse : nullptr;
    }

    std::vector<std::size_t> alike_among(const std::vector<Glimpsed>& seen,
                                         const std::vector<FoundFile>& files, PossibleTwins& twins,
                                         TimeLeft& time) {
        std::vector<std::size_t> alike;
        for (std::size_t i = 0; i < seen.size(); ++i) {
            if (const auto* glimpse = marked(seen[i])) {
                twins.add(files[i].state.bytes, *glimpse->mark);
            }
        }
        for (std::size_t i = 0; i < seen.size(); ++i) {
            const auto* glimpse = marked(seen[i]);
            if (glimpse == nullptr) continue;
            const bool may = twins.may_have_twin(files[i].state.bytes, *glimpse->mark);
            may ? alike.push_back(i) : tell(files[i].file, time);
        }
        return alike;
    }

    using GroupWork = std::function<std::vector<Glimpsed>(std::size_t first, std::size_t count)>;

    // The work for all of 0 … count - 1 on several threads, each result taken in turn.
    void in_groups(std::size_t count, const GroupWork& work,
                   const std::function<void(Glimpsed)>& take) const {
        const auto do_group = [&](std::size_t group) {
            const std::size_t first = group * at_once;
            return work(first, std::min(at_once, count - first));
        };
        const std::size_t groups = (count + at_once - 1) / at_once;
        OrderedWork<std::vector<Glimpsed>> all{groups, worker_count(), do_group, wishes_.stop};
        while (auto group = all.next()) {
            for (Glimpsed& done : *group) take(std::move(done));
        }
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

    void tell(const Path& file, TimeLeft& time) {
        time.done(1);
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
