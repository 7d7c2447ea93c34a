#include "ui/settings/lock_part.h"

#include <QLineEdit>
#include <QPointer>

#include "indexer/backup/copies_to_unlock.h"
#include "indexer/backup/recovery_key_place.h"
#include "indexer/sheet/recovery_key_sheet.h"
#include "ui/shell/lock_work.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

void name_field(QLineEdit& field, const QString& name) {
    field.setAccessibleName(name);
    field.setPlaceholderText(name);
}

QLineEdit* make_passphrase_field(const QString& name) {
    auto* field = new QLineEdit;
    field->setEchoMode(QLineEdit::Password);
    name_field(*field, name);
    return field;
}

// Why it cannot be read is said once somebody goes on with it.
bool some_stayed_locked(FileSystem& disk, const Path& library) try {
    return read_left_lock(disk, library).has_value();
} catch (const std::exception&) {
    return true;
}

Written write_recovery_key(const RecoveryKeyPage& page, Decoder& decoder, FileSystem& disk,
                           const Path& file) {
    const auto ruler = make_text_ruler();
    return write_pdf(recovery_key_sheet(page, *ruler, Paper::a4), decoder, disk, file);
}

// What the passphrase or recovery key that she typed opens, or why it opens nothing here.
struct OpenedLock {
    KeysInHand keys;
    QString refused;
};

OpenedLock opened_by(const std::string& words, const std::optional<LockFile>& lock,
                     const KeysInHand& in_use) try {
    if (!lock) return {{}, LockPart::tr("There is no lock in the library's folder any longer.")};
    const KeysInHand keys = keys_from(*lock, words);
    if (!in_use || keys->mark() == in_use->mark()) return {keys, {}};
    return {{},
            LockPart::tr("Another lock lies in the library's folder by now: open the library "
                         "again, and try again.")};
} catch (const LockError& error) {
    return {{}, from_utf8(error.what())};
}

}  // namespace

LockPart::LockPart(Session& session)
    : SettingsPart(tr("The lock"),
                   tr("A locked library is encrypted on the disk, and so are its backups: whoever "
                      "takes the laptop or the drive can read nothing without the passphrase. If "
                      "you forget it and lose the recovery key, nobody can open the library, nor "
                      "help.")),
      session_(session),
      state_(make_text({})),
      former_(make_passphrase_field({})),
      passphrase_(make_passphrase_field(tr("New passphrase, at least 12 characters"))),
      again_(make_passphrase_field(tr("The same again"))),
      put_on_(make_button(tr("Lock the library…"))),
      change_(make_button(tr("Change the passphrase"))),
      recovery_key_(make_button(tr("New recovery key…"))),
      take_off_(make_button({})),
      plain_then_(
          make_text(tr("Photos and records then lie on the disk as plain files, and whoever "
                       "takes the laptop can read them. To open the library for a day, its "
                       "passphrase is enough."))),
      sure_(make_quiet_button(tr("Take the lock off"))),
      notice_(new Notice),
      ways_out_(session, *notice_, *this) {
    connect(again_, &QLineEdit::returnPressed, this,
            [this] { session_.library().keys() ? change() : put_on(); });
    connect(put_on_, &QPushButton::clicked, this, &LockPart::put_on);
    connect(change_, &QPushButton::clicked, this, &LockPart::change);
    connect(recovery_key_, &QPushButton::clicked, this, &LockPart::print_new_recovery_key);
    connect(take_off_, &QPushButton::clicked, this,
            [this] { some_stayed_ ? take_off() : ask_before_taking_off(sure_->isHidden()); });
    connect(sure_, &QPushButton::clicked, this, &LockPart::take_off);
    for (QWidget* part : {static_cast<QWidget*>(state_), static_cast<QWidget*>(former_),
                          static_cast<QWidget*>(passphrase_), static_cast<QWidget*>(again_)}) {
        column()->addWidget(part);
    }
    QHBoxLayout* row = make_row(2);
    for (QPushButton* button : {put_on_, change_, recovery_key_, take_off_}) {
        row->addWidget(button);
    }
    row->addStretch();
    column()->addLayout(row);
    column()->addWidget(plain_then_);
    column()->addWidget(sure_, 0, Qt::AlignLeading);
    column()->addWidget(notice_);
    column()->addWidget(make_quiet(
        tr("Backups made before stay readable until you remove them, and a disk's free space may "
           "still hold what was there before. What leaves the library, such as sheets and exports, "
           "is not encrypted.")));
    ask_before_taking_off(false);
}

void LockPart::refresh() {
    const bool locked = session_.library().keys() != nullptr;
    some_stayed_ = !locked && some_stayed_locked(session_.disk(), session_.library().folder());
    state_->setText(locked         ? tr("This library is locked.")
                    : some_stayed_ ? tr("The lock was taken off, and some of the library stayed "
                                        "locked: to go on with it, give the passphrase or the "
                                        "recovery key that it had.")
                                   : tr("This library is not locked."));
    put_on_->setVisible(!locked);
    former_->setVisible(locked || some_stayed_);
    name_field(*former_, locked ? tr("Passphrase or recovery key as it is now")
                                : tr("Passphrase or recovery key that it had"));
    for (QPushButton* button : {change_, recovery_key_}) button->setVisible(locked);
    take_off_->setVisible(locked || some_stayed_);
    if (!locked) ask_before_taking_off(false);
}

void LockPart::leave() {
    for (QLineEdit* field : {former_, passphrase_, again_}) field->clear();
    ask_before_taking_off(false);
}

void LockPart::say_done(const QString& sentence) {
    notice_->say(sentence);
}

// The same button takes the question back, so that a second click at once unlocks nothing.
void LockPart::ask_before_taking_off(bool asked) {
    take_off_->setText(asked ? tr("Keep the lock") : tr("Unlock for good"));
    plain_then_->setVisible(asked);
    sure_->setVisible(asked);
}

bool LockPart::nothing_runs() {
    if (session_.work() == nullptr) return true;
    notice_->say(tr("Wait until the work that runs has ended."));
    return false;
}

void LockPart::say_at_former(const QString& sentence) {
    notice_->say(sentence);
    former_->setFocus();
    former_->selectAll();
}

bool LockPart::former_given() {
    if (!former_->text().isEmpty()) return true;
    say_at_former(tr("This needs the passphrase or the recovery key: type it in the first field."));
    return false;
}

// Whoever finds the window open may not change the lock: that takes the words that open it.
void LockPart::with_keys(const std::function<void(const KeysInHand&)>& go_on) {
    if (!former_given() || !nothing_runs()) return;
    notice_->say(tr("Looking whether it opens the library…"));
    const auto read = some_stayed_ ? read_left_lock : read_lock;
    Job* job = session_.start<OpenedLock>(
        [read, words = to_utf8(former_->text()), in_use = session_.library().keys(),
         &disk = session_.disk()](Library& library, Job&) {
            return opened_by(words, read(disk, library.folder()), in_use);
        },
        [part = QPointer(this), go_on](const OpenedLock& opened) {
            if (!part) return;
            if (!opened.keys) return part->say_at_former(opened.refused);
            part->former_->clear();
            part->notice_->say({});
            go_on(opened.keys);
        });
    connect(job, &Job::failed, notice_, &Notice::say);
}

std::optional<std::string> LockPart::new_passphrase() {
    const std::string words = to_utf8(passphrase_->text());
    if (const auto reason = reason_against_passphrase(words); !reason.empty()) {
        notice_->say(from_utf8(reason));
        return std::nullopt;
    }
    if (passphrase_->text() != again_->text()) {
        notice_->say(tr("The two are not the same: type the passphrase again."));
        return std::nullopt;
    }
    notice_->say({});
    return words;
}

std::optional<Path> LockPart::place_for_recovery_key() {
    const auto file = ways_out_.ask_file(tr("Save the page with the recovery key"),
                                         to_utf8(tr("recovery key")), QStringLiteral(".pdf"),
                                         tr("PDF (*.pdf)"));
    if (!file) return std::nullopt;
    const std::string reason = reason_against_recovery_key_in(session_.library(), *file);
    if (reason.empty()) return file;
    notice_->say(from_utf8(reason));
    return std::nullopt;
}

// The page is on the disk before anything is locked.
void LockPart::put_on() {
    const auto words = new_passphrase();
    if (!words || !nothing_runs()) return;
    const auto file = place_for_recovery_key();
    if (!file) return;
    RecoveryKeyPage page{{}, session_.library().folder(), session_.today(), {}};
    session_.close_for(
        {.title = tr("Locking the library"),
         .library = page.library,
         .work =
             [page, words = *words, file = *file, &disk = session_.disk(),
              &decoder = session_.decoder()](Job& job) mutable {
                 const NewLock lock = new_lock(words);
                 page.key = lock.recovery_key;
                 write_recovery_key(page, decoder, disk, file);
                 return said_of(
                     lock_library(disk, page.library, lock, lock_wishes(job)),
                     tr("The library is locked. Print %1, put the page away apart from the "
                        "laptop, and remove the file.")
                         .arg(isolated(from_utf8(file.native()))));
             },
         .of_lock = true});
}

void LockPart::change() {
    if (!former_given()) return;
    const auto words = new_passphrase();
    if (!words) return;
    with_keys([this, words = *words](const KeysInHand& keys) {
        Job* job = session_.start<bool>(
            [words, keys, &disk = session_.disk()](Library& library, Job&) {
                change_passphrase(disk, library.folder(), keys, words);
                return true;
            },
            [part = QPointer(this)](bool) {
                if (!part) return;
                part->leave();
                part->notice_->say(
                    tr("The passphrase is changed. A backup opens with the one before until "
                       "it is made again."));
            });
        connect(job, &Job::failed, notice_, &Notice::say);
    });
}

void LockPart::print_new_recovery_key() {
    with_keys([this](const KeysInHand& keys) {
        const auto file = place_for_recovery_key();
        if (!file) return;
        ways_out_.save_as([file = *file, keys, today = session_.today(), &disk = session_.disk(),
                           &decoder = session_.decoder()](Library& library) {
            Written written;
            renew_recovery_key(disk, library.folder(), keys, [&](const std::string& key) {
                written =
                    write_recovery_key({key, library.folder(), today, {}}, decoder, disk, file);
            });
            return written;
        });
    });
}

void LockPart::take_off() {
    with_keys([this](const KeysInHand& keys) {
        const Path library = session_.library().folder();
        session_.close_for({.title = some_stayed_ ? tr("Unlocking what stayed locked")
                                                  : tr("Unlocking the library for good"),
                            .library = library,
                            .work =
                                [library, keys, &disk = session_.disk()](Job& job) {
                                    LockWishes wishes = lock_wishes(job);
                                    wishes.whole_copy = copies_to_unlock(disk, library);
                                    return said_of(unlock_for_good(disk, library, keys, wishes),
                                                   tr("The library is not locked any longer."));
                                },
                            .of_lock = true});
    });
}

}  // namespace quarterturn
