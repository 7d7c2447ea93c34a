#pragma once

#include "indexer/lock/library_keys.h"
#include "ui/printing/ways_out.h"
#include "ui/settings/settings_part.h"

class QLineEdit;
class QPushButton;

namespace quarterturn {

class Notice;
class Session;

// The lock of the library: to put it on, to change its passphrase or recovery key, to take it off.
class LockPart : public SettingsPart {
    Q_OBJECT
  public:
    explicit LockPart(Session& session);

    void refresh() override;
    void leave() override;  // what was typed goes
    void say_done(const QString& sentence);

  private:
    // On a thread of its own, since it takes a while: opens the lock with what she typed, and goes
    // on when that is right.
    void with_keys(const std::function<void(const KeysInHand&)>& go_on);
    bool former_given();
    void say_at_former(const QString& sentence);
    std::optional<std::string> new_passphrase();
    std::optional<Path> place_for_recovery_key();
    void put_on();
    void change();
    void print_new_recovery_key();
    void ask_before_taking_off(bool asked);
    void take_off();
    bool nothing_runs();

    Session& session_;
    QLabel* state_;
    bool some_stayed_ = false;  // locked, when the lock was taken off
    QLineEdit* former_;         // what opens it now
    QLineEdit* passphrase_;
    QLineEdit* again_;
    QPushButton* put_on_;
    QPushButton* change_;
    QPushButton* recovery_key_;
    QPushButton* take_off_;
    QLabel* plain_then_;
    QPushButton* sure_;  // while she is asked
    Notice* notice_;
    WaysOut ways_out_;
};

}  // namespace quarterturn
