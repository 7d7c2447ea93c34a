#include "ui/pairs/file_pictures.h"

#include <QMetaObject>

#include "indexer/intake/thumbnails.h"
#include "indexer/portfolio/inspiration.h"
#include "indexer/worker/worker_process.h"
#include "ui/pictures/picture_source.h"
#include "ui/shell/session.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr int kept_kilobytes = 64 << 10;

FilePicture read_picture(FileSystem& disk, Decoder& decoder, const Path& file, int edge) {
    try {
        const Decoded decoded = picture_from_elsewhere(disk, decoder, file, edge);
        if (!decoded.ok()) return {{}, from_utf8(decoded.refused), decoded.nothing_opens};
        return {to_image(shrink_to(decoded.bgr, edge)), {}, false};
    } catch (const NoWorker& reason) {
        return {{}, said_here(reason.what()), true};
    } catch (const std::exception& problem) {
        return {{}, said_here(problem.what()), false};
    }
}

}  // namespace

FilePictures::FilePictures(Session& session, QObject* parent)
    : QObject(parent), session_(session), kept_(kept_kilobytes) {}

const FilePicture* FilePictures::at_hand(const Path& file, int edge) {
    const QString key = QString::number(edge) + u' ' + from_utf8(file.native());
    if (const FilePicture* kept = kept_.object(key)) return kept;
    if (on_their_way_.insert(key).second) decode(file, edge, key);
    return nullptr;
}

void FilePictures::decode(const Path& file, int edge, const QString& key) {
    helper_.give([this, &disk = session_.disk(), &decoder = session_.decoder(), file, edge, key] {
        FilePicture picture = read_picture(disk, decoder, file, edge);
        mailbox_.post([this, key, picture = std::move(picture)] { keep(key, picture); });
    });
}

void FilePictures::keep(const QString& key, const FilePicture& picture) {
    on_their_way_.erase(key);
    kept_.insert(key, new FilePicture(picture), picture.picture.sizeInBytes() / 1024 + 1);
    if (picture.nothing_opens && !std::exchange(said_nothing_opens_, true)) {
        emit nothing_opens(picture.refused);
    }
    emit arrived();
}

void FilePictures::forget() {
    kept_.clear();
}

}  // namespace quarterturn
