#include "ui/keeping_safe/backup_part.h"

#include <QComboBox>
#include <QPointer>

#include "indexer/backup/backup_folder.h"
#include "indexer/backup/backup_place.h"
#include "indexer/backup/backup_words.h"
#include "indexer/backup/erased_there.h"
#include "indexer/backup/reminder.h"
#include "indexer/disk/clock.h"
#include "indexer/store/library_settings.h"
#include "ui/shell/import_progress.h"
#include "ui/shell/session.h"
#include "ui/shell/setting_edit.h"
#include "ui/widgets/notice.h"
#include "ui/widgets/parts.h"
#include "ui/widgets/said_here.h"
#include "ui/widgets/words.h"

namespace quarterturn {
namespace {

constexpr std::array offered_days{7, 14, 30, 60, 90};
constexpr const char* backup_folder_name = "Quarterturn backup";

QString photos_words(std::int64_t photos) {
    return BackupPart::tr("%n photo(s)", nullptr, static_cast<int>(photos));
}

QString folder_words(const Backup& backup) {
    const QString folder = isolated(from_utf8(backup.folder.native()));
    if (backup.volume.empty()) return folder;
    //: a drive by its label, and a folder on it
    return BackupPart::tr("the drive %1, %2").arg(isolated(from_utf8(backup.volume)), folder);
}

QString standing_words(const Backup& backup) {
    if (!backup.at) return BackupPart::tr("Begun, and never whole: %1").arg(folder_words(backup));
    //: a day, a number of photos, a place
    return BackupPart::tr("%1: %2 in %3")
        .arg(shown(date_of(*backup.at)), photos_words(backup.photos), folder_words(backup));
}

QStringList report_words(const BackupReport& report) {
    if (report.stopped) {
        return {
            BackupPart::tr("Stopped. The backup before is as it was; the next one goes on from "
                           "here.")};
    }
    QStringList words;
    const auto copied = static_cast<int>(report.copied);
    words << (report.problems.empty()
                  ? BackupPart::tr("All is safe there. New: %n file(s).", nullptr, copied)
                  : BackupPart::tr("Not all could be copied. Copied: %n file(s).", nullptr,
                                   copied));
    if (report.removed > 0) {
        words << BackupPart::tr(
            "Removed there, since the library does not have them any longer: %n file(s).", nullptr,
            static_cast<int>(report.removed));
    }
    if (report.records_erased > 0) {
        words << BackupPart::tr(
            "Removed there, since somebody was erased: %n older set(s) of records.", nullptr,
            static_cast<int>(report.records_erased));
    }
    for (const std::string& line : lacking_lines(report)) words << said_here(line);
    for (const std::string& line : lost_there_lines(report)) words << said_here(line);
    for (const std::string& line : gone_lines(report)) words << said_here(line);
    for (const std::string& line : staying_lines(report)) words << said_here(line);
    for (const std::string& line : same_disk_lines(report)) words << said_here(line);
    return words;
}

}  // namespace

BackupPart::BackupPart(Session& session)
    : WorkPart(session, tr("A copy on another drive"),
               tr("Photos, papers and records as plain files that can be read without the program; "
                  "a locked library's copy is locked too. Only what is new is copied. The last ten "
                  "copies of the records are kept, and of each month before that the last.")),
      days_(new QComboBox) {
    static_cast<QVBoxLayout*>(layout())->addLayout(build_reminder());
}

BackupPart::~BackupPart() = default;

QLayout* BackupPart::build_reminder() {
    const QString words = tr("Tell me of photos that have been in no backup for");
    days_->setAccessibleName(words);
    for (const int days : offered_days) offer_days(days);
    connect(days_, &QComboBox::activated, this, &BackupPart::choose_days);
    auto* row = make_row(2);
    row->addWidget(make_quiet(words), 1);
    row->addWidget(days_);
    return row;
}

void BackupPart::offer_days(int days) {
    days_->addItem(tr("%n day(s)", nullptr, days), days);
}

void BackupPart::choose_days() {
    const int days = days_->currentData().toInt();
    if (days == backup_days(session().library().settings())) return;
    session().change_records(change_setting(to_utf8(tr("changed when you are told of backups")),
                                            backup_days_setting, std::to_string(days)));
    refresh();
}

void BackupPart::refresh() {
    empty_layout(standing());
    empty_layout(ways());
    Library& library = session().library();
    const std::vector<Backup> known = library.backups().all();
    for (const Backup& backup : known) add_backup(backup);
    if (const auto reminder = backup_reminder(library, session().today())) {
        auto* notice = new Notice;
        standing()->addWidget(notice);  // before it shows itself, or it were a window of its own
        notice->say(from_utf8(*reminder));
    }
    add_ways(known);
    look_at_locks(known);
    const int days = backup_days(library.settings());
    if (days_->findData(days) < 0) offer_days(days);
    days_->setCurrentIndex(days_->findData(days));
}

void BackupPart::add_backup(const Backup& backup) {
    const bool asked = to_forget_ == backup.id;
    // Where the question was asked, so that a second click at once forgets nothing.
    QPushButton* lost =
        make_quiet_button(asked ? tr("Keep it on the list") : tr("Forget this backup"));
    lost->setAccessibleName((asked ? tr("Keep %1 on the list") : tr("Take %1 off the list"))
                                .arg(folder_words(backup)));
    if (!asked) lost->setToolTip(tr("Takes it off the list; nothing is removed there."));
    connect(lost, &QPushButton::clicked, this,
            [this, backup, asked] { ask_before(asked ? std::nullopt : std::optional(backup.id)); });
    QPushButton* read = make_quiet_button(tr("Read all of it"));
    read->setAccessibleName(tr("Read all of %1").arg(folder_words(backup)));
    read->setToolTip(tr("Reads every file there, and writes anew what is damaged."));
    connect(read, &QPushButton::clicked, this,
            [this, folder = backup.folder] { back_up_to(folder, true); });
    QHBoxLayout* row = make_row(2);
    row->addWidget(make_text(standing_words(backup)), 1);
    if (takes_no_more(backup)) read->hide();
    row->addWidget(read, 0, Qt::AlignTop);
    row->addWidget(lost, 0, Qt::AlignTop);
    standing()->addLayout(row);
    if (asked) {
        standing()->addWidget(
            make_text(tr("Only where the drive is lost: that folder is taken for no backup of this "
                         "library any more. Nothing is removed there, also not what was erased "
                         "since.")));
        QPushButton* sure = make_quiet_button(tr("Forget it for good"));
        connect(sure, &QPushButton::clicked, this, [this, backup] { forget(backup); });
        standing()->addWidget(sure, 0, Qt::AlignLeading);
    }
    if (takes_no_more(backup)) {
        standing()->addWidget(make_text(
            session().library().keys()
                ? tr("It was made before the library was locked, and takes no more: make a new one "
                     "in a new folder, and remove that one by hand.")
                : tr("It was made before the library was unlocked, and takes no more: make a new "
                     "one in a new folder, and remove that one by hand.")));
    }
    const std::string erased = erased_there_words(session().library(), backup);
    if (!erased.empty()) standing()->addWidget(make_text(said_here(erased)));
}

bool BackupPart::takes_no_more(const Backup& backup) const {
    return locked_otherwise_.contains(backup.folder);
}

void BackupPart::look_at_locks(const std::vector<Backup>& known) {
    if (looking_ || known.empty()) return;
    looking_ = true;
    look_ = std::make_unique<Job>(
        [this, known, keys = session().library().keys(), &disk = session().disk()](Job&) {
            std::set<Path> found;
            for (const Backup& backup : known) {
                if (was_locked_otherwise(disk, backup.folder, keys)) found.insert(backup.folder);
            }
            return std::function<void()>([this, found] {
                if (std::exchange(locked_otherwise_, found) != found) session().touch();
            });
        });
    connect(look_.get(), &Job::ended, this, [this] { looking_ = false; });
}

void BackupPart::ask_before(std::optional<BackupId> to_forget) {
    to_forget_ = to_forget;
    refresh();
}

void BackupPart::forget(const Backup& backup) {
    to_forget_.reset();
    session().attempt([&] { session().library().backups().forget(backup.id); });
    session().touch();
}

void BackupPart::add_ways(const std::vector<Backup>& known) {
    std::vector<QPushButton*> buttons;
    for (const Backup& backup : known) {
        if (takes_no_more(backup)) continue;
        const QString place =
            from_utf8(backup.volume.empty() ? backup.folder.filename().native() : backup.volume);
        //: a drive or a folder
        buttons.push_back(buttons.empty() ? make_next_button(tr("Back up now to %1").arg(place))
                                          : make_button(tr("Back up now to %1").arg(place)));
        connect(buttons.back(), &QPushButton::clicked, this,
                [this, folder = backup.folder] { back_up_to(folder); });
    }
    const QString words = tr("Choose a drive or folder…");
    buttons.push_back(buttons.empty() ? make_next_button(words) : make_button(words));
    connect(buttons.back(), &QPushButton::clicked, this, &BackupPart::choose);
    ways()->addWidget(make_button_row(buttons));
}

// A drive as a whole gets a folder for it; a folder that is empty, or holds a backup, is taken.
void BackupPart::choose() {
    const Path chosen = choose_folder(tr("Drive or folder for the backup"));
    if (chosen.empty()) return;
    session().attempt([&] {
        FileSystem& disk = session().disk();
        const bool as_it_is = disk.list(chosen).empty() || disk.exists(chosen / manifest_name);
        back_up_to(as_it_is ? chosen : chosen / backup_folder_name);
    });
}

void BackupPart::back_up_to(const Path& folder, bool read_all) {
    if (!may_begin()) return;
    Job* job = session().start<BackupReport>(
        [folder, read_all, now = session().now()](Library& library, Job& working) {
            BackupWishes wishes;
            wishes.to = folder;
            wishes.read_all = read_all;
            wishes.now = now;
            wishes.utc = utc_now();
            wishes.stop = working.stop_token();
            wishes.progress = progress_to(working);
            return back_up(library, wishes);
        },
        [part = QPointer(this)](const BackupReport& done) {
            if (part) part->report(report_words(done));
        });
    show_work(job, read_all ? tr("Reading the backup, and copying what is new or damaged")
                            : tr("Copying what is new"));
}

}  // namespace quarterturn
