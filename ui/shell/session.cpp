#include "ui/shell/session.h"

#include <QApplication>
#include <QSettings>

#include "indexer/erasure/empty_bin.h"
#include "indexer/erasure/erase.h"
#include "indexer/intake/begun_intake.h"
#include "indexer/intake/sort.h"
#include "indexer/lock/key_ring.h"
#include "indexer/lock/lock_file.h"
#include "indexer/store/erasure_table.h"
#include "indexer/store/lock_fits.h"
#include "ui/widgets/said_here.h"

namespace quarterturn {
namespace {

const QString last_library_key = QStringLiteral("library/last");

QString what_was(const Turned& turned, const QString& sentence) {
    const QString words = sentence.arg(QString::fromStdString(turned.said));
    if (turned.photos_gone == 0) return words;
    return words + QLatin1Char(' ') +
           Session::tr("%n photo(s) of it gone for good.", nullptr, turned.photos_gone);
}

}  // namespace

Session::Session(FileSystem& disk, Decoder& decoder, Clock clock, QObject* parent)
    : QObject(parent), disk_(disk), decoder_(decoder), clock_(std::move(clock)) {}

Session::~Session() {
    // Jobs and pictures use the library's folder: they end before it is let go.
    qDeleteAll(findChildren<Job*>());
    pictures_.reset();
}

QString Session::open(const Path& folder) {
    return take([&] { return Library::open_or_look(folder, disk_); });
}

QString Session::create(const Path& folder) {
    return take([&] { return Library::create(folder, disk_); });
}

bool Session::wants_passphrase(const Path& folder) try {
    const auto lock = read_lock(disk_, folder);
    if (lock) refuse_lock_on_plain_library(disk_, folder, *lock);
    return lock && (lock->state != LockState::locked || !key_ring::with_mark(lock->mark));
} catch (const std::exception&) {
    return false;  // opening it says why
}

void Session::close_for(ClosedWork work) {
    closed_work_ = std::move(work);
    // The button that asked for it stands on a screen.
    QMetaObject::invokeMethod(this, &Session::close, Qt::QueuedConnection);
}

void Session::close() {
    emit closing();
    pictures_.reset();
    look_in_hand_.reset();
    library_.reset();
    emit closed();
}

std::optional<ClosedWork> Session::take_closed_work() {
    return std::exchange(closed_work_, std::nullopt);
}

QString Session::take(const std::function<Library()>& get) {
    try {
        library_.emplace(get());
    } catch (const std::exception& problem) {
        return said_here(problem.what());
    }
    version_of_others_ = library_->database().version_of_others();
    look_in_hand_.reset();
    pictures_ =
        std::make_unique<PictureLoader>(library_pictures(library_->folder(), disk_, decoder_));
    connect(pictures_.get(), &PictureLoader::nothing_opens, this, &Session::say);
    if (last_library() != library_->folder()) {
        QSettings().setValue(last_library_key,
                             QByteArray::fromStdString(library_->folder().native()));
    }
    emit opened();
    attempt([this] {
        if (unfinished_intake(*library_).empty()) return;
        say(
            tr("Bringing photos in was not finished. What came in is whole; it goes on under "
               "Bringing photos in."));
    });
    take_up_erasures();
    return {};
}

QString Session::standing_words() const {
    if (!library_) return {};
    if (library_->only_to_look()) {
        //: why
        return tr("Only to be looked at, nothing can be changed: %1")
            .arg(said_here(library_->why_only_to_look()));
    }
    return said_here(library_->older_records());
}

// What was interrupted goes on, and what has lain in the bin for long enough goes.
void Session::take_up_erasures() {
    if (library_->only_to_look()) return;
    attempt([this] {
        const bool to_say = ErasureTable(library_->database()).any_unfinished() ||
                            !std::ranges::all_of(left_by_erasures(*library_), &ErasureLeft::told);
        if (!to_say && !any_left_incoming(*library_) && !any_to_leave_bin(*library_, today())) {
            return;
        }
        using TakenUp = std::pair<std::vector<std::string>, BinEmptied>;
        start<TakenUp>(
            [today = today()](Library& library, Job&) {
                clear_left_incoming(library);
                std::vector<std::string> erased = finish_erasures(library);
                return TakenUp{std::move(erased), let_go_of_bin(library, today)};
            },
            [this](const TakenUp& taken_up) {
                const auto& [erased, emptied] = taken_up;
                if (!erased.empty()) {
                    say_with(said_here(erased.front()) + u' ' +
                                 tr("Settings say at any time what is left of it."),
                             {erased.begin() + 1, erased.end()});
                    attempt([this] { note_told_of_erasures(*library_); });
                }
                if (emptied.gone == 0) return;
                say_with(tr("%n photo(s) of the bin gone for good.", nullptr, emptied.gone),
                         emptied.left);
            });
    });
}

void Session::say_with(const QString& sentence, const std::vector<std::string>& left) {
    say(said_with(sentence, left));
}

Path Session::last_library() {
    return QSettings().value(last_library_key).toByteArray().toStdString();
}

bool Session::attempt(const std::function<void()>& act) {
    try {
        act();
        return true;
    } catch (const std::exception& problem) {
        say(said_here(problem.what()));
        return false;
    }
}

bool Session::change_photos(const PhotoChange& change) {
    const bool went_well = attempt([&] { change(*library_); });
    if (went_well) touch();
    return went_well;
}

bool Session::change_records(const Edit& edit) {
    return attempt([&] { change_records_or_throw(edit); });
}

void Session::change_records_or_throw(const Edit& edit) {
    library_->history().record(edit.said, [&] { edit.act(*library_); });
    touch();
}

void Session::undo() {
    attempt([&] {
        const auto undone = quarterturn::undo(*library_);
        if (!undone) return say(tr("There is nothing to undo."));
        say(undone->stands ? stop_words(*undone) : what_was(*undone, tr("Undone: %1.")));
        touch();
    });
}

void Session::redo() {
    attempt([&] {
        const auto redone = quarterturn::redo(*library_);
        if (!redone) return say(tr("There is nothing to do again."));
        say(what_was(*redone, tr("Done again: %1.")));
        touch();
    });
}

QString Session::stop_words(const Turned& stop) {
    QString words = what_was(stop, tr("What you did last cannot be undone: %1."));
    if (can_undo()) words += QLatin1Char(' ') + tr("Undo again takes back what was before it.");
    return words;
}

bool Session::can_undo() {
    try {
        return library_ && library_->history().can_undo();
    } catch (const StoreError&) {
        return false;
    }
}

bool Session::can_redo() {
    try {
        return library_ && library_->history().can_redo();
    } catch (const StoreError&) {
        return false;
    }
}

void Session::forget_past() {
    pictures_->forget();
    look_in_hand_.reset();
}

void Session::use_theme(const Theme& theme) {
    const bool other_size = theme.text_size != remembered_theme().text_size;
    remember_theme(theme);
    apply_theme(*qApp, theme);
    if (other_size) emit theme_changed();
}

void Session::touch() {
    (void)changed_outside();
    emit records_changed();
}

bool Session::changed_outside() {
    if (!library_ || library_->only_to_look()) return false;
    try {
        library_->database().refuse_if_replaced();
        const std::int64_t version = library_->database().version_of_others();
        return std::exchange(version_of_others_, version) != version;
    } catch (const StoreError& problem) {
        if (std::exchange(trouble_said_, problem.what()) != problem.what()) {
            say(said_here(trouble_said_));
        }
        return false;
    }
}

Job* Session::start_job(Job::Work work) {
    auto* job = new Job(library_->folder(), disk_, std::move(work), this);
    connect(job, &Job::failed, this, &Session::said);
    connect(job, &Job::ended, this, [this, job] {
        touch();
        job->deleteLater();
    });
    return job;
}

}  // namespace quarterturn
