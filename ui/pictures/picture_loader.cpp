#include "ui/pictures/picture_loader.h"
#include "ui/widgets/said_here.h"

#include <QMetaObject>
#include <utility>

namespace quarterturn {
namespace {

// QCache counts in int; kilobytes keep it from running over.
qsizetype kilobytes(qint64 bytes) {
    return static_cast<qsizetype>(bytes / 1024 + 1);
}

bool needs_sharp(int long_edge) {
    return long_edge == 0 || long_edge > small_long_edge;
}

FetchedPicture fetch(PictureSource& source, const PictureJob& job) {
    try {
        return job.small ? source.small(job.photo) : source.sharp(job.photo, job.long_edge);
    } catch (const std::exception& problem) {
        return {{}, said_here(problem.what())};
    }
}

}  // namespace

PictureLoader::PictureLoader(PictureSourceMaker make_source, qint64 cache_bytes, int threads,
                             QObject* parent)
    : QObject(parent), make_source_(std::move(make_source)), pictures_(kilobytes(cache_bytes)) {
    for (int i = 0; i < threads; ++i) threads_.emplace_back([this] { work(); });
}

PictureLoader::~PictureLoader() {
    queue_.close();
    threads_.clear();
}

bool PictureLoader::has(PhotoId photo, int key) const {
    return pictures_.contains({photo.value, key}) || refused_.contains({photo.value, key});
}

// Sizes are rounded up to a few steps, so that a window being resized does not ask for each of
// them.
int PictureLoader::sharp_key(int long_edge) {
    constexpr std::array steps{1024, 1536, 2048, 3072, 4096};
    const auto step = std::ranges::lower_bound(steps, long_edge);
    return long_edge == 0 || step == steps.end() ? 0 : *step;
}

QImage PictureLoader::at_hand(PhotoId photo, int long_edge) const {
    if (needs_sharp(long_edge)) {
        const QImage* sharp = pictures_.object({photo.value, sharp_key(long_edge)});
        if (sharp) return *sharp;
    }
    const QImage* small = pictures_.object({photo.value, small_key});
    return small ? *small : QImage();
}

bool PictureLoader::is_at_hand(PhotoId photo, int long_edge) const {
    return has(photo, needs_sharp(long_edge) ? sharp_key(long_edge) : small_key);
}

void PictureLoader::want(const QObject* viewer, const std::vector<PictureWish>& wishes) {
    watch(viewer);
    std::deque<PictureJob> jobs;
    for (const PictureWish& wish : wishes) {
        const int key = sharp_key(wish.long_edge);
        const bool sharp = needs_sharp(wish.long_edge);
        const bool sharp_there = sharp && has(wish.photo.id, key);
        if (!sharp_there && !has(wish.photo.id, small_key)) {
            jobs.push_back({wish.photo, small_long_edge, true});
        }
        if (sharp && !sharp_there) jobs.push_back({wish.photo, key, false});
    }
    queue_.replace(viewer, std::move(jobs));
}

void PictureLoader::forget() {
    pictures_.clear();
    refused_.clear();
}

void PictureLoader::watch(const QObject* viewer) {
    if (!watched_.insert(viewer).second) return;
    connect(viewer, &QObject::destroyed, this, [this, viewer] {
        watched_.erase(viewer);
        queue_.drop(viewer);
    });
}

void PictureLoader::work() {
    std::unique_ptr<PictureSource> source;
    while (const auto job = queue_.next()) {
        FetchedPicture picture;
        try {
            if (!source) source = make_source_();
            picture = fetch(*source, *job);
        } catch (const std::exception& problem) {
            picture.refused = said_here(problem.what());
        }
        // The queue forgets the job only when the window has the picture, so that it is not fetched
        // twice in between.
        mailbox_.post([this, job = *job, picture = std::move(picture)] { keep(job, picture); });
    }
}

void PictureLoader::keep(const PictureJob& job, const FetchedPicture& picture) {
    queue_.done(job);
    const Key key{job.photo.id.value, job.small ? small_key : job.long_edge};
    if (picture.image.isNull()) {
        refused_.insert(key);
        emit refused(job.photo.id, picture.refused);
        const bool said =
            std::exchange(said_nothing_opens_, said_nothing_opens_ || picture.nothing_opens);
        if (picture.nothing_opens && !said) emit nothing_opens(picture.refused);
        return;
    }
    // A picture larger than the whole cache is kept alone rather than not at all.
    const qsizetype cost = std::min(kilobytes(picture.image.sizeInBytes()), pictures_.maxCost());
    pictures_.insert(key, new QImage(picture.image), cost);
    emit arrived(job.photo.id);
}

}  // namespace quarterturn
