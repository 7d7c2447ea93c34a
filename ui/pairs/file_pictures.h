#pragma once

#include <QCache>
#include <QImage>
#include <QObject>
#include <set>

#include "indexer/disk/file_system.h"
#include "ui/threads/helper_thread.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {

class Session;

struct FilePicture {
    QImage picture;
    QString refused;             // why there is none
    bool nothing_opens = false;  // nor will there be one of any file
};

// Pictures that are no photos of the library, decoded on a thread of their own.
class FilePictures : public QObject {
    Q_OBJECT
  public:
    explicit FilePictures(Session& session, QObject* parent = nullptr);

    // No larger than `edge` pixels on its long edge. Null while it is not there; then arrived()
    // tells. Holds until the next call.
    const FilePicture* at_hand(const Path& file, int edge);
    void forget();

  signals:
    void arrived();
    void nothing_opens(const QString& why);  // once, however many files are asked for

  private:
    void decode(const Path& file, int edge, const QString& key);
    void keep(const QString& key, const FilePicture& picture);

    Session& session_;
    QCache<QString, FilePicture> kept_;
    std::set<QString> on_their_way_;
    bool said_nothing_opens_ = false;
    Mailbox mailbox_;
    HelperThread helper_;
};

}  // namespace quarterturn
