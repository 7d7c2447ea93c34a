#include "ui/recipe/paste_picture.h"

#include <QClipboard>
#include <QDateTime>
#include <QGuiApplication>
#include <QImage>
#include <QMimeData>
#include <QTemporaryDir>
#include <QUrl>
#include <fstream>
#include <iterator>

#include "indexer/disk/checksum.h"
#include "indexer/intake/import.h"
#include "indexer/intake/tagging.h"
#include "ui/shell/session.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

struct FromClipboard {
    std::vector<Path> files;
    std::shared_ptr<QTemporaryDir> folder;  // of a picture that was no file yet
};

struct Pasted {
    std::vector<PhotoId> photos;
    QString refused;
};

QString say_nothing_there() {
    return QCoreApplication::translate(
        "paste", "There is no picture in the clipboard: copy one first, or a file of one.");
}

QString say_in_bin() {
    return QCoreApplication::translate(
        "paste",
        "This picture lies in the bin: take it out first, under Photos of everything, and paste it "
        "again.");
}

// Named by the moment, so that two pictures do not share a name.
Path write_picture(const QImage& picture, const QTemporaryDir& folder) {
    const QString moment = QDateTime::currentDateTime().toString(QStringLiteral("yyyyMMdd-HHmmss"));
    const QString file = folder.filePath(QStringLiteral("pasted-%1.png").arg(moment));
    return picture.save(file) ? Path(to_utf8(file)) : Path();
}

FromClipboard pictures_in(const QMimeData& data) {
    FromClipboard found;
    for (const QUrl& url : data.urls()) {
        if (url.isLocalFile()) found.files.emplace_back(to_utf8(url.toLocalFile()));
    }
    if (!found.files.empty() || !data.hasImage()) return found;
    found.folder = std::make_shared<QTemporaryDir>();
    const Path file = write_picture(qvariant_cast<QImage>(data.imageData()), *found.folder);
    if (!file.empty()) found.files.push_back(file);
    return found;
}

std::optional<PhotoId> photo_with_bytes_of(Library& library, const Path& file) {
    std::ifstream in(file, std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    return library.photos().with_sha256(sha256(bytes));
}

Pasted bring_in(Library& library, Decoder& decoder, const FromClipboard& clipboard) {
    const ImportReport report = import_photos(library, decoder, {.sources = clipboard.files});
    Pasted pasted{report.imported, {}};
    for (const Path& file : report.already_here) {
        if (const auto photo = photo_with_bytes_of(library, file)) pasted.photos.push_back(*photo);
    }
    if (!report.in_bin.empty()) return {{}, say_in_bin()};
    for (const RefusedFile& refused : report.refused) pasted.refused = from_utf8(refused.reason);
    return pasted;
}

std::vector<std::string> checksums_of(Library& library, const std::vector<PhotoId>& photos) {
    std::vector<std::string> checksums;
    for (const Photo& photo : library.photos().these(photos)) {
        checksums.push_back(photo.file.sha256);
    }
    return checksums;
}

}  // namespace

bool holds_pictures(const QMimeData& data) {
    const bool files = std::ranges::any_of(data.urls(), &QUrl::isLocalFile);
    return files || (data.hasImage() && !data.hasText());
}

void bring_in_from_clipboard(Session& session, LookId look,
                             std::function<void(const std::vector<std::string>&)> hand_over) {
    const QMimeData* data = QGuiApplication::clipboard()->mimeData();
    const FromClipboard clipboard = data ? pictures_in(*data) : FromClipboard{};
    if (clipboard.files.empty()) return session.say(say_nothing_there());
    session.start<Pasted>(
        [clipboard, &decoder = session.decoder()](Library& library, Job&) {
            return bring_in(library, decoder, clipboard);
        },
        [&session, look, folder = session.library().folder(),
         hand_over = std::move(hand_over)](const Pasted& pasted) {
            if (session.library().folder() != folder) return;  // another was opened meanwhile
            if (pasted.photos.empty()) {
                return session.say(pasted.refused.isEmpty() ? say_nothing_there() : pasted.refused);
            }
            const bool tagged = session.change_photos([&](Library& library) {
                tag(library, pasted.photos, {.look = std::optional(look)});
            });
            if (tagged) hand_over(checksums_of(session.library(), pasted.photos));
        });
}

}  // namespace quarterturn
