#pragma once

#include <QWidget>

#include "ui/round_the_head/head_round.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class Notice;
class PhotoTile;
class ReasonField;

// The photo in hand, large, with what is asked of it and what can be said of it.
class HandPart : public QWidget {
    Q_OBJECT
  public:
    HandPart(Session& session, HeadRound& round, QWidget* parent = nullptr);

    void show_round();
    void ask_why();  // use it anyway

  signals:
    void every_pixel_asked();
    void side_by_side_asked();
    void changed();  // without a change of records

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit_tile();
    void build_questions(QVBoxLayout& column);
    void build_actions(QVBoxLayout& column);
    void show_tile(const Photo& photo);
    void show_picture();
    void show_words(const Photo& photo);
    void show_questions(const Photo& photo);
    QString goes_to(const Photo& photo) const;
    int picture_edge() const;

    Session& session_;
    HeadRound& round_;
    QWidget* content_;
    QLabel* nothing_;
    QWidget* tile_spot_;  // its height follows the picture
    PhotoTile* tile_ = nullptr;
    QLabel* name_;
    QLabel* goes_to_;
    QPushButton* suggestion_;
    Notice* disagreement_;
    QLabel* accepted_;
    QPushButton* use_anyway_;
    QPushButton* not_anyway_;
    ReasonField* reason_;
    QPushButton* mirrored_;
    QPushButton* off_;
};

}  // namespace quarterturn
