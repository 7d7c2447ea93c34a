#include "ui/wedding_morning/board_world.h"

#include <QApplication>
#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QDateTime>
#include <optional>

#include "indexer/parts/part.h"

namespace quarterturn {
namespace {

// What makes sounds takes longer to load than the rest of the board: it is loaded with the
// first timer.
class LateBell final : public Bell {
  public:
    void ring() override try { bell().ring(); } catch (const std::exception&) {
        QApplication::beep();  // a timer that has ended is heard also when a part is missing
    }
    bool can_be_heard() override try {
        return bell().can_be_heard();
    } catch (const std::exception&) {
        return false;
    }

  private:
    Bell& bell() {
        if (!bell_) bell_.reset(part_function<Bell*()>("bell", "quarterturn_make_bell")());
        return *bell_;
    }

    std::unique_ptr<Bell> bell_;
};

// freedesktop.org, "Idle Inhibition Service", 0.1: what the desktops of today answer to.
QDBusMessage screen_saver_call(const QString& method, const QVariantList& arguments) {
    QDBusMessage call =
        QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.ScreenSaver"),
                                       QStringLiteral("/org/freedesktop/ScreenSaver"),
                                       QStringLiteral("org.freedesktop.ScreenSaver"), method);
    call.setArguments(arguments);
    return call;
}

class DesktopStaysAwake final : public StayAwake {
  public:
    ~DesktopStaysAwake() override { DesktopStaysAwake::release(); }

    void ask() override {
        if (std::exchange(wanted_, true) || asking_) return;
        const auto bus = QDBusConnection::sessionBus();
        if (!bus.isConnected()) return emit refused();
        const auto answer = bus.asyncCall(screen_saver_call(
            QStringLiteral("Inhibit"), {QApplication::applicationDisplayName(),
                                        tr("The board of a wedding morning is on the screen")}));
        asking_ = true;
        auto* watcher = new QDBusPendingCallWatcher(answer, this);
        connect(watcher, &QDBusPendingCallWatcher::finished, this, &DesktopStaysAwake::take_answer);
    }

    void release() override {
        wanted_ = false;
        if (!cookie_) return;
        QDBusConnection::sessionBus().send(
            screen_saver_call(QStringLiteral("UnInhibit"), {*cookie_}));
        cookie_.reset();
    }

  private:
    void take_answer(QDBusPendingCallWatcher* watcher) {
        const QDBusPendingReply<uint> answer = *watcher;
        watcher->deleteLater();
        asking_ = false;
        if (answer.isError()) return emit refused();
        cookie_ = answer.value();
        if (!wanted_) release();
    }

    bool wanted_ = false;
    bool asking_ = false;  // its answer counts for whoever wants it by then
    std::optional<uint> cookie_;
};

}  // namespace

BoardWorld this_computer() {
    return {[] { return QDateTime::currentSecsSinceEpoch(); }, std::make_shared<LateBell>(),
            std::make_shared<DesktopStaysAwake>()};
}

}  // namespace quarterturn
