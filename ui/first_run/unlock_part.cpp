#include "ui/first_run/unlock_part.h"

#include <QLineEdit>

#include "indexer/backup/copies_to_unlock.h"
#include "indexer/lock/key_ring.h"
#include "ui/shell/lock_work.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/words.h"

namespace quarterturn {

namespace {

bool locking_was_interrupted(FileSystem& disk, const Path& library) try {
    const auto lock = read_lock(disk, library);
    return lock && lock->state != LockState::locked;
} catch (const std::exception&) {
    return false;  // giving the passphrase says why
}

}  // namespace

UnlockPart::UnlockPart(FileSystem& disk, const Path& library, QWidget* parent)
    : QFrame(parent), what_to_type_(make_text(tr("Its passphrase:"))), words_(new QLineEdit) {
    Card card = make_card();
    card.column->addWidget(make_heading(tr("This library is locked")));
    card.column->addWidget(make_quiet(isolated(from_utf8(library.native()))));
    if (locking_was_interrupted(disk, library)) {
        card.column->addWidget(
            make_text(tr("Locking it, or unlocking it for good, was interrupted. Nothing is lost: "
                         "it goes on from there once you have given the passphrase.")));
    }
    card.column->addWidget(what_to_type_);
    words_->setEchoMode(QLineEdit::Password);
    words_->setAccessibleName(tr("Passphrase"));
    card.column->addWidget(words_);
    QPushButton* open = make_next_button(tr("Open it"));
    QPushButton* recovery = make_quiet_button(tr("I have only the recovery key"));
    QPushButton* other = make_quiet_button(tr("Another library"));
    connect(open, &QPushButton::clicked, this, &UnlockPart::give);
    connect(words_, &QLineEdit::returnPressed, this, &UnlockPart::give);
    connect(recovery, &QPushButton::clicked, this, &UnlockPart::take_recovery_key);
    connect(other, &QPushButton::clicked, this, &UnlockPart::given_up);
    QHBoxLayout* row = make_row(2);
    row->addWidget(open);
    row->addWidget(recovery);
    row->addWidget(other);
    row->addStretch();
    card.column->addLayout(row);
    auto* whole = new QVBoxLayout(this);
    whole->setContentsMargins(0, 0, 0, 0);
    whole->addWidget(card.frame);
    setFocusProxy(words_);
}

void UnlockPart::give() {
    if (!words_->text().isEmpty()) emit words_given(to_utf8(words_->text()));
}

// It is copied from paper: seen while it is typed.
void UnlockPart::take_recovery_key() {
    what_to_type_->setText(
        tr("Its recovery key, from the paper. Small letters, spaces and hyphens make no "
           "difference. Set a new passphrase afterwards, in the settings."));
    words_->setAccessibleName(tr("Recovery key"));
    words_->setEchoMode(QLineEdit::Normal);
    words_->setFocus();
}

std::function<QString(Job&)> unlocking(const Path& library, FileSystem& disk,
                                       const std::string& words) {
    return [library, &disk, words](Job& job) {
        const auto lock = read_lock(disk, library);
        if (!lock) return QString();
        const KeysInHand keys = keys_from(*lock, words);
        key_ring::add(library, keys);
        LockWishes wishes = lock_wishes(job);
        wishes.whole_copy = copies_to_unlock(disk, library);
        return said_of(finish_locking(disk, library, keys, wishes), {});
    };
}

}  // namespace quarterturn
