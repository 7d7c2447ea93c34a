#pragma once

#include <QFrame>
#include <chrono>
#include <optional>

class QLabel;
class QProgressBar;
class QPushButton;

namespace quarterturn {

// Long work showing itself: how many of how many, the file at hand, how long it will take, pause,
// and stop, which keeps what is done.
class ProgressPanel : public QFrame {
    Q_OBJECT
  public:
    explicit ProgressPanel(const QString& work, QWidget* parent = nullptr);

    void show_progress(qint64 done, qint64 total, const QString& file,
                       std::optional<std::chrono::seconds> left);

  signals:
    void pause_asked(bool pause);  // false: go on
    void stop_asked();

  private:
    void toggle_pause();

    QLabel* count_;
    QLabel* file_;
    QLabel* left_;
    QProgressBar* bar_;
    QPushButton* pause_;
    QPushButton* stop_;
    bool paused_ = false;
};

// "about 2 minutes left"
QString time_left_sentence(std::chrono::seconds left);

}  // namespace quarterturn
