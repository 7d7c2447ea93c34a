#pragma once

#include <QWidget>
#include <optional>
#include <vector>

#include "ui/portfolio_screen/hair_only_pictures.h"

class QComboBox;
class QLabel;
class QPushButton;

namespace quarterturn {

class FlowLayout;
class Job;
class Notice;
class PartView;
class PhotoTile;
class Session;

// The pictures of one photo that leave a face out: proposed, or of a part that she draws; each
// large enough to be judged, and confirmed by her.
class HairOnlyPage : public QWidget {
    Q_OBJECT
  public:
    explicit HairOnlyPage(Session& session, QWidget* parent = nullptr);

    void open(const Photo& photo);

  signals:
    void done();  // confirmed, or left

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* build_side();
    QWidget* build_own_part();
    void take(const HairOnlyPictures& found);
    void offer(JudgedPicture picture);
    void look_at(std::size_t number);
    void draw_own();
    void make_own();
    void confirm();
    void forget();
    void show_confirmed();
    void wait_for(Job& job, const QString& what);

    Session& session_;
    Photo photo_;
    QImage whole_;
    std::vector<JudgedPicture> pictures_;
    std::vector<PhotoTile*> tiles_;
    std::optional<std::size_t> looked_at_;
    PartView* view_;
    QLabel* name_;
    QLabel* words_;
    FlowLayout* proposals_;
    QComboBox* way_;
    QPushButton* make_;
    QPushButton* confirm_;
    QLabel* confirmed_;
    QPushButton* forget_;
    Notice* notice_;
};

}  // namespace quarterturn
