#pragma once

#include <QWidget>
#include <map>

#include "indexer/looks/pair_frames.h"
#include "ui/two_heads/laid_pairs.h"

class QButtonGroup;
class QHBoxLayout;
class QLabel;
class QScrollArea;

namespace quarterturn {

class FlowLayout;
class FrameButton;
class LaidFrame;
class Session;

// One client across her sittings, one angle at a time: a row of frames by date and one of them
// large, laid upon the first where that is sure, so that stepping through moves only the hair.
class ProgressPage : public QWidget {
    Q_OBJECT
  public:
    ProgressPage(Session& session, LaidPairs& laid, QWidget* parent = nullptr);

    // Reads the records. The angle stays while the client has a photo of it.
    void show_client(ClientId client, std::optional<Angle> angle);

  signals:
    void left();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

  private:
    const std::vector<ProgressFrame>& frames() const;
    void show_angles();
    void choose_angle(Angle angle);
    void build_row();
    void step_to(std::size_t frame);
    void show_frames();
    void want_pictures();
    // Nothing where it does not surely lie upon the first.
    std::optional<Similarity> lay_of(std::size_t frame);

    Session& session_;
    LaidPairs& laid_;
    std::map<Angle, std::vector<ProgressFrame>> progress_;
    Angle angle_ = Angle::back;
    std::size_t current_ = 0;
    QLabel* title_;
    QLabel* words_;
    FlowLayout* angles_;
    QButtonGroup* group_ = nullptr;
    LaidFrame* large_;
    QScrollArea* scroll_;
    QHBoxLayout* row_;
    std::vector<FrameButton*> buttons_;
};

}  // namespace quarterturn
