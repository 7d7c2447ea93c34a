#include "ui/settings/lock_part.h"

#include <QLineEdit>

#include "indexer/sheet/recovery_key_sheet.h"
#include "ui/shell/lock_work.h"
#include "ui/shell/session.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

QLineEdit* make_passphrase_field(const QString& name) {
    auto* field = new QLineEdit;
    field->setEchoMode(QLineEdit::Password);
    field->setAccessibleName(name);
    field->setPlaceholderText(name);
    return field;
}

Written write_recovery_key(const RecoveryKeyPage& page, Decoder& decoder, FileSystem& disk,
                           const Path& file) {
    const auto ruler = make_text_ruler();
    return write_pdf(recovery_key_sheet(page, *ruler, Paper::a4), decoder, disk, file);
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
      passphrase_(make_passphrase_field(tr("New passphrase, at least 12 characters"))),
      again_(make_passphrase_field(tr("The same again"))),
      put_on_(make_button(tr("Lock the library…"))),
      change_(make_button(tr("Change the passphrase"))),
      recovery_key_(make_button(tr("New recovery key…"))),
      take_off_(make_button(tr("Unlock for good"))),
      notice_(new Notice),
      ways_out_(session, *notice_, *this) {
    connect(put_on_, &QPushButton::clicked, this, &LockPart::put_on);
    connect(change_, &QPushButton::clicked, this, &LockPart::change);
    connect(recovery_key_, &QPushButton::clicked, this, &LockPart::print_new_recovery_key);
    connect(take_off_, &QPushButton::clicked, this, &LockPart::take_off);
    for (QWidget* part : {static_cast<QWidget*>(state_), static_cast<QWidget*>(passphrase_),
                          static_cast<QWidget*>(again_)}) {
        column()->addWidget(part);
    }
    QHBoxLayout* row = make_row(2);
    for (QPushButton* button : {put_on_, change_, recovery_key_, take_off_}) {
        row->addWidget(button);
    }
    row->addStretch();
    column()->addLayout(row);
    column()->addWidget(notice_);
    column()->addWidget(make_quiet(
        tr("Backups made before stay readable until you remove them, and a disk's free space may "
           "still hold what was there before. What leaves the library, such as sheets and exports, "
           "is not encrypted.")));
}

void LockPart::refresh() {
    const bool locked = session_.library().keys() != nullptr;
    state_->setText(locked ? tr("This library is locked.") : tr("This library is not locked."));
    put_on_->setVisible(!locked);
    for (QPushButton* button : {change_, recovery_key_, take_off_}) button->setVisible(locked);
}

void LockPart::leave() {
    passphrase_->clear();
    again_->clear();
}

bool LockPart::nothing_runs() {
    if (session_.work() == nullptr) return true;
    notice_->say(tr("Wait until the work that runs has ended."));
    return false;
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
    return ways_out_.ask_file(tr("Save the page with the recovery key"),
                              to_utf8(tr("recovery key")), QStringLiteral(".pdf"),
                              tr("PDF (*.pdf)"));
}

// The page is on the disk before anything is locked.
void LockPart::put_on() {
    const auto words = new_passphrase();
    if (!words || !nothing_runs()) return;
    const auto file = place_for_recovery_key();
    if (!file) return;
    RecoveryKeyPage page{{}, session_.library().folder(), session_.today(), {}};
    session_.close_for(
        {tr("Locking the library"), page.library,
         [page, words = *words, file = *file, &disk = session_.disk(),
          &decoder = session_.decoder()](Job& job) mutable {
             const NewLock lock = new_lock(words);
             page.key = lock.recovery_key;
             write_recovery_key(page, decoder, disk, file);
             return said_of(lock_library(disk, page.library, lock, lock_wishes(job)),
                            tr("The library is locked. Print %1, put the page away apart from the "
                               "laptop, and remove the file.")
                                .arg(isolated(from_utf8(file.native()))));
         }});
}

void LockPart::change() {
    const auto words = new_passphrase();
    if (!words || !nothing_runs()) return;
    session_.start<bool>(
        [words = *words, &disk = session_.disk()](Library& library, Job&) {
            change_passphrase(disk, library.folder(), library.keys(), words);
            return true;
        },
        [this](bool) {
            leave();
            notice_->say(
                tr("The passphrase is changed. A backup opens with the one before until "
                   "it is made again."));
        });
}

void LockPart::print_new_recovery_key() {
    if (!nothing_runs()) return;
    const auto file = place_for_recovery_key();
    if (!file) return;
    ways_out_.save_as([file = *file, today = session_.today(), &disk = session_.disk(),
                       &decoder = session_.decoder()](Library& library) {
        Written written;
        renew_recovery_key(disk, library.folder(), library.keys(), [&](const std::string& key) {
            written = write_recovery_key({key, library.folder(), today, {}}, decoder, disk, file);
        });
        return written;
    });
}

void LockPart::take_off() {
    if (!nothing_runs()) return;
    const Path library = session_.library().folder();
    session_.close_for(
        {tr("Unlocking the library for good"), library,
         [library, keys = session_.library().keys(), &disk = session_.disk()](Job& job) {
             return said_of(unlock_for_good(disk, library, keys, lock_wishes(job)),
                            tr("The library is not locked any longer."));
         }});
}

}  // namespace quarterturn
