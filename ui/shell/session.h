#pragma once
// What all screens share: the open library, its pictures, and the way to change records so that
// every change can be undone. Lives on the window's thread.

#include <QObject>
#include <functional>
#include <memory>
#include <optional>

#include "indexer/store/library.h"
#include "ui/pictures/picture_loader.h"
#include "ui/shell/edits.h"
#include "ui/shell/job.h"
#include "ui/shell/place.h"
#include "ui/theme/theme.h"

namespace quarterturn {

class Decoder;

// Work on a library that nobody may have open meanwhile. It answers what to say after it.
struct ClosedWork {
    QString title;
    Path library;
    std::function<QString(Job&)> work;
    bool of_lock = false;  // what it answers is said beside the lock, in the settings
};

class Session : public QObject {
    Q_OBJECT
  public:
    using Clock = std::function<LocalTime()>;

    // Both must outlive the session and be safe to use from several threads.
    Session(FileSystem& disk, Decoder& decoder, Clock clock, QObject* parent = nullptr);
    ~Session() override;

    // Each answers a sentence when it did not work, and leaves things as they were. A library where
    // nothing can be written is opened to be looked at: what would change it says why it does not.
    QString open(const Path& folder);
    QString create(const Path& folder);
    bool is_open() const { return library_.has_value(); }
    // Whether it is a library whose passphrase has to be asked first, or whose locking was
    // interrupted.
    bool wants_passphrase(const Path& folder);
    // Closes the library as soon as the screens have let go of it; the page that stands there
    // without one does the work and opens it again.
    void close_for(ClosedWork work);
    std::optional<ClosedWork> take_closed_work();
    // The library that was open last, on this computer; empty when none was.
    static Path last_library();

    Library& library() { return *library_; }
    // What holds for as long as it is open, to stand above all screens; mostly empty.
    QString standing_words() const;
    PictureLoader& pictures() { return *pictures_; }
    Decoder& decoder() { return decoder_; }
    FileSystem& disk() { return disk_; }
    LocalTime now() const { return clock_(); }
    Date today() const { return date_of(clock_()); }

    // The look she is about, whichever screen she goes to.
    std::optional<LookId> look_in_hand() const { return look_in_hand_; }
    void choose_look(std::optional<LookId> look) { look_in_hand_ = look; }

    // Each makes one action that can be undone, and answers false, after saying why, when it did
    // not work. What she says of photos:
    bool change_photos(const PhotoChange& change);
    // Other records:
    bool change_records(const Edit& edit);
    // The same for a form that says beside its fields what is wrong: throws what the store throws.
    void change_records_or_throw(const Edit& edit);
    void undo();
    void redo();
    // False also while no library is open, and while it cannot be read.
    bool can_undo();
    bool can_redo();
    // After an erasure: no picture from before is at hand.
    void forget_past();

    // Starts long work. `work` runs on a thread of its own with its own library connection;
    // `finish` gets its result here. Signals of the answer tell of progress, failure and the end;
    // it deletes itself after ended(). Records count as changed when it has ended.
    template <class Result>
    Job* start(std::function<Result(Library&, Job&)> work, std::function<void(Result)> finish);

    // Runs `act` and says so when it throws; answers whether it went well.
    bool attempt(const std::function<void()>& act);

    // Long work that runs, or null.
    Job* work() const { return findChild<Job*>(); }

    // From now on, on this computer. For another text size the window builds its screens anew.
    void use_theme(const Theme& theme);

    // Somebody changed records in another way: screens look again.
    void touch();
    // Whether another program changed records since the screens were told to look. False also while
    // the disk does not answer.
    bool changed_outside();
    void go_to(const Place& place) { emit asked_for(place); }
    // A sentence at the foot of the window.
    void say(const QString& sentence) { emit said(sentence); }
    // With what is left to do about it, a line each.
    void say_with(const QString& sentence, const std::vector<std::string>& left);

  signals:
    void opened();
    void closing();  // screens have to go now
    void closed();
    void records_changed();
    void said(const QString& sentence);
    void asked_for(const quarterturn::Place& place);
    void theme_changed();

  private:
    void close();
    QString take(const std::function<Library()>& get);
    Job* start_job(Job::Work work);
    void take_up_erasures();
    QString stop_words(const Turned& stop);

    FileSystem& disk_;
    Decoder& decoder_;
    Clock clock_;
    std::optional<Library> library_;
    std::optional<ClosedWork> closed_work_;
    std::unique_ptr<PictureLoader> pictures_;
    std::optional<LookId> look_in_hand_;
    std::string trouble_said_;  // once, though it is met every second
    std::int64_t version_of_others_ = 0;
};

template <class Result>
Job* Session::start(std::function<Result(Library&, Job&)> work,
                    std::function<void(Result)> finish) {
    return start_job([work = std::move(work), finish = std::move(finish)](
                         Library& library, Job& job) -> std::function<void()> {
        auto result = std::make_shared<Result>(work(library, job));
        return [result, finish] { finish(std::move(*result)); };
    });
}

}  // namespace quarterturn
