#pragma once

#include <QFrame>
#include <functional>
#include <string>

#include "indexer/disk/file_system.h"

class QLabel;
class QLineEdit;

namespace quarterturn {

class Job;

// Asks for the passphrase of a locked library, or for its recovery key.
class UnlockPart : public QFrame {
    Q_OBJECT
  public:
    UnlockPart(FileSystem& disk, const Path& library, QWidget* parent = nullptr);

  signals:
    void words_given(const std::string& words);
    void given_up();

  private:
    void give();
    void take_recovery_key();

    QLabel* what_to_type_;
    QLineEdit* words_;
};

// Puts the library's key on the key ring, and goes on with its locking where that was interrupted.
// Answers what to say of that.
std::function<QString(Job&)> unlocking(const Path& library, FileSystem& disk,
                                       const std::string& words);

}  // namespace quarterturn
