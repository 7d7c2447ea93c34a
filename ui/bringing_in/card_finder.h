#pragma once

#include <QObject>
#include <QTimer>
#include <thread>
#include <vector>

#include "indexer/disk/file_system.h"
#include "ui/threads/mailbox.h"

namespace quarterturn {

// Looks every few seconds, on a thread of its own, for cards and phones that are connected.
class CardFinder : public QObject {
    Q_OBJECT
  public:
    explicit CardFinder(FileSystem& disk, QObject* parent = nullptr);

    const std::vector<Path>& cards() const { return cards_; }
    void look_while(bool wanted);  // looks at once when it is

  signals:
    void found(const std::vector<Path>& cards);  // others than before

  private:
    void look();
    void keep(const std::vector<Path>& cards);

    FileSystem& disk_;
    QTimer timer_;
    std::vector<Path> cards_;
    bool looking_ = false;
    Mailbox mailbox_;
    std::jthread thread_;
};

// Where this computer shows what is connected to it: mounted disks and phones. Waits for disks.
std::vector<Path> connected_folders();

}  // namespace quarterturn
