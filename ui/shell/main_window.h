#pragma once

#include <QMainWindow>
#include <QStringList>
#include <map>
#include <vector>

#include "ui/shell/screen.h"

class QLabel;
class QStackedWidget;

namespace quarterturn {

class MomentsRow;
class StandingNotice;

// A row of moments at the top, the screen of one of them below, and a sentence at the foot.
class MainWindow : public QMainWindow {
    Q_OBJECT
  public:
    // `welcome` is shown while no library is open.
    MainWindow(Session& session, std::vector<ScreenEntry> entries,
               std::function<QWidget*(Session&)> welcome);
    ~MainWindow() override;

    void go_to(const Place& place);
    Screen* screen(Moment moment);  // made when it was not there; null when there is no such moment
    Moment moment() const { return moment_; }

  protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    bool focusNextPrevChild(bool next) override;

  private:
    void build();
    void build_anew();
    QWidget* build_top_row();
    QWidget* build_foot();
    void add_actions();
    void choose_the_day();
    void show_alone(bool alone);
    Screen* current_screen() const;
    bool is_for_client() const;
    void show_library();
    void let_go_of_library();
    void refresh_current();
    void show_help();
    void say(const QString& sentence);
    const ScreenEntry* entry(Moment moment) const;

    Session& session_;
    std::vector<ScreenEntry> entries_;
    std::function<QWidget*(Session&)> welcome_;
    Moment moment_ = Moment::coming_up;
    bool alone_ = false;  // the screen of the moment fills the whole screen
    Qt::WindowStates state_before_;
    QWidget* top_row_ = nullptr;
    MomentsRow* moments_ = nullptr;
    QStackedWidget* stack_ = nullptr;
    StandingNotice* standing_ = nullptr;
    QLabel* sentence_ = nullptr;
    QStringList kept_back_;  // sentences, while a client looks
    std::map<Moment, Screen*> screens_;
};

}  // namespace quarterturn
