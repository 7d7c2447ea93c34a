#pragma once

#include <QFrame>

class QLabel;
class QPushButton;

namespace quarterturn {

class FolderWatch;
class Notice;
class Session;

// Watching a folder while a sitting runs: starts it, says what came in, stops it.
class WatchPart : public QFrame {
    Q_OBJECT
  public:
    explicit WatchPart(Session& session, QWidget* parent = nullptr);

  private:
    void choose_or_stop();
    void watch_again();
    void show_state();
    QString state() const;
    QString refused() const;

    FolderWatch& watch_;
    QLabel* state_;
    Notice* notice_;
    QPushButton* again_;
    QPushButton* button_;
};

}  // namespace quarterturn
