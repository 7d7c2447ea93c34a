#include "indexer/intake/heads.h"

#include "indexer/image/head.h"
#include "indexer/intake/ordered_work.h"
#include "indexer/intake/threads.h"
#include "indexer/intake/thumbnails.h"
#include "indexer/rules/disagreement.h"

namespace quarterturn {
namespace {

constexpr int batch_heads = 64;

struct Looked {
    std::optional<HeadSigns> signs;
    std::string refused;
};

HeadFinder& finder_of_this_thread() {
    thread_local HeadFinder finder;
    return finder;
}

Looked look_at(Library& library, Decoder& decoder, const Photo& photo) {
    const Decoded picture = thumbnail(library, decoder, photo);
    if (!picture.ok()) return {.signs = {}, .refused = photo.file.name + ": " + picture.refused};
    return {.signs = finder_of_this_thread().signs(picture.bgr), .refused = {}};
}

// Writes what was seen a batch at a time, so that stopping keeps what is done.
class HeadRecorder {
  public:
    explicit HeadRecorder(Library& library) : library_(library) {}

    void add(const Photo& photo, const HeadSigns& signs) {
        waiting_.push_back({&photo, signs});
        if (waiting_.size() >= batch_heads) write();
    }

    void write() {
        if (waiting_.empty()) return;
        Transaction transaction{library_.database()};
        for (const auto& [photo, signs] : waiting_) {
            library_.photos().set_measured(photo->id, photo->measures, photo->fingerprint, signs,
                                           photo->flaws);
        }
        transaction.commit();
        waiting_.clear();
    }

  private:
    Library& library_;
    std::vector<std::pair<const Photo*, HeadSigns>> waiting_;
};

}  // namespace

HeadReport look_for_heads(Library& library, Decoder& decoder,
                          const std::function<void(std::int64_t, std::int64_t)>& progress,
                          std::stop_token stop) {
    return look_for_heads_in(library, decoder, library.photos().all(), progress, std::move(stop));
}

HeadReport look_for_heads_in(Library& library, Decoder& decoder, std::vector<Photo> photos,
                             const std::function<void(std::int64_t, std::int64_t)>& progress,
                             std::stop_token stop) {
    if (library.only_to_look()) return {};
    const OneThreadEach one_thread_each;
    std::erase_if(photos, [](const Photo& photo) { return photo.head_signs.has_value(); });
    OrderedWork<Looked> work{photos.size(), worker_count(),
                             [&](std::size_t i) { return look_at(library, decoder, photos[i]); },
                             stop};
    HeadReport report;
    HeadRecorder recorder{library};
    std::size_t done = 0;
    for (; const auto looked = work.next(); ++done) {
        if (looked->signs) {
            recorder.add(photos[done], *looked->signs);
            ++report.looked_at;
        } else {
            report.failed.push_back(looked->refused);
        }
        if (progress) progress(static_cast<std::int64_t>(done + 1), std::ssize(photos));
    }
    recorder.write();
    report.stopped = done < photos.size();
    return report;
}

std::vector<TagQuestion> tag_questions(std::span<const Photo> photos) {
    std::vector<TagQuestion> questions;
    for (const Photo& photo : photos) {
        if (auto question = disagreement(photo)) questions.push_back({photo.id, *question});
    }
    return questions;
}

}  // namespace quarterturn
