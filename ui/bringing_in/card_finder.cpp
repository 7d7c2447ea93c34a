#include "ui/bringing_in/card_finder.h"

#include <QDir>
#include <QStandardPaths>
#include <QStorageInfo>

#include "indexer/intake/cards.h"

namespace quarterturn {
namespace {

constexpr std::chrono::seconds between_card_looks{3};

void add_folders_in(const QString& folder, std::vector<Path>& folders) {
    for (const QFileInfo& entry :
         QDir(folder).entryInfoList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name)) {
        folders.emplace_back(entry.filePath().toStdString());
    }
}

// Phones and cameras on a cable: the desktop shows each as a folder, and each of its memories as
// one in it.
void add_phones(std::vector<Path>& folders) {
    const QString run = QStandardPaths::writableLocation(QStandardPaths::RuntimeLocation);
    if (run.isEmpty()) return;
    std::vector<Path> phones;
    add_folders_in(run + QStringLiteral("/gvfs"), phones);
    for (const Path& phone : phones) {
        folders.push_back(phone);
        add_folders_in(QString::fromStdString(phone.native()), folders);
    }
}

}  // namespace

std::vector<Path> connected_folders() {
    std::vector<Path> folders;
    for (const QStorageInfo& disk : QStorageInfo::mountedVolumes()) {
        if (!disk.isReady() || disk.isRoot()) continue;
        folders.emplace_back(disk.rootPath().toStdString());
    }
    add_phones(folders);
    return folders;
}

CardFinder::CardFinder(FileSystem& disk, QObject* parent) : QObject(parent), disk_(disk) {
    timer_.setInterval(between_card_looks);
    connect(&timer_, &QTimer::timeout, this, &CardFinder::look);
}

void CardFinder::look_while(bool wanted) {
    if (wanted == timer_.isActive()) return;
    if (!wanted) return timer_.stop();
    timer_.start();
    look();
}

void CardFinder::look() {
    if (looking_) return;
    looking_ = true;
    thread_ = std::jthread([this] {
        auto cards = camera_cards(disk_, connected_folders());
        mailbox_.post([this, cards = std::move(cards)] { keep(cards); });
    });
}

void CardFinder::keep(const std::vector<Path>& cards) {
    looking_ = false;
    if (cards == cards_) return;
    cards_ = cards;
    emit found(cards_);
}

}  // namespace quarterturn
