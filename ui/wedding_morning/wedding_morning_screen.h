#pragma once

#include "indexer/looks/wedding_board.h"
#include "ui/shell/edits.h"
#include "ui/shell/screen.h"
#include "ui/wedding_morning/board.h"
#include "ui/wedding_morning/enlarged_photo.h"
#include "ui/wedding_morning/take_along.h"
#include "ui/wedding_morning/timer_watch.h"

class QStackedWidget;

namespace quarterturn {

class BoardBar;
class ClientStrip;
class EmptyPage;
class Notice;
class OwnTimer;
class Session;
class TimerStrip;

// The board of a wedding, client by client in the order of work, to be read from two metres with
// wet hands: photos, cautions, recipe with ticks, timers.
class WeddingMorningScreen : public Screen {
    Q_OBJECT
  public:
    explicit WeddingMorningScreen(Session& session, BoardWorld world = this_computer());
    ~WeddingMorningScreen() override;

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;
    void stand_alone(bool alone) override;

    TimerWatch& timers() { return watch_; }

  protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

  private:
    void add_keys();
    void build();  // anew, in the sizes that fit now
    QWidget* build_going();
    QLayout* build_top();
    void connect_board();
    BoardType fitting_type() const;
    void fit();

    void choose_wedding();
    void show_all();
    void show_empty(const QString& sentence, const QString& button, const Place& leads_to);
    void show_board();
    void want_pictures();

    const BoardClient& client() const { return board_->clients[place_.client]; }
    const BoardLook* look() const;
    void go_to_client(std::size_t client);
    void go_to_look(std::size_t look);
    void turn(int by);
    void tick(int step, bool done);
    void say_done(bool done);
    void start_step_timer(int step);
    void start_own_timer(const QString& name, int minutes);
    void start(const Timer& timer);
    void change_timers(const Edit& edit);
    void enlarge(Angle angle);
    void enlarge_step(int step, std::size_t photo);
    void close_enlarged();
    void step_back();  // Esc
    void toggle_dim();
    void toggle_photo_light();
    void show_light();
    void take_along(TakenAlong what);
    void lead_to(Moment moment);

    Session& session_;
    BoardWorld world_;
    TimerWatch watch_;
    std::optional<WeddingId> wedding_;
    std::optional<WeddingBoard> board_;
    std::optional<ClientId> wanted_client_;
    std::optional<LookId> wanted_look_;
    BoardPlace place_;
    BoardType type_;
    bool alone_ = false;
    bool photos_bright_ = false;  // on a dim board
    bool silence_told_ = false;   // where no sound can be played
    bool gathered_ = false;       // what changed is not in the records the board is gathered from

    QStackedWidget* pages_;
    QWidget* going_ = nullptr;
    EmptyPage* empty_ = nullptr;
    EnlargedPhoto* enlarged_ = nullptr;
    BoardBar* bar_ = nullptr;
    OwnTimer* own_timer_ = nullptr;
    ClientStrip* clients_ = nullptr;
    TimerStrip* strip_ = nullptr;
    Notice* notice_ = nullptr;
    TakeAlong* take_along_ = nullptr;
    QStackedWidget* body_ = nullptr;
    Board* on_board_ = nullptr;
};

}  // namespace quarterturn
