#pragma once

#include <QKeySequence>

#include "ui/round_the_head/head_round.h"
#include "ui/shell/screen.h"

class QPushButton;
class QStackedWidget;

namespace quarterturn {

class CloserPart;
class CoverageRing;
class EmptyPage;
class HandPart;
class LookChoice;
class MissingPart;
class PlanPart;
class Tray;

// Going round the head: every photo is placed where the camera stood, with one key.
class RoundTheHeadScreen : public Screen {
    Q_OBJECT
  public:
    explicit RoundTheHeadScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    struct KeyedAct {
        QKeySequence key;
        QString said;  // empty: said together with the one before
        std::function<void()> act;
    };

    void build();
    QWidget* build_header();
    QWidget* build_body();
    void name_keys();
    void add_shortcuts(QWidget& body);
    void show_round();
    void show_gaps();
    void use(const std::function<void()>& act);  // and shows what came of it
    void choose_angle(Angle angle);
    void go_to_shot(const Shot& shot);
    void look_closer(bool side_by_side);
    void look_for_faces();

    Session& session_;
    HeadRound round_;
    std::vector<KeyedAct> keys_;
    QWidget* focus_next_ = nullptr;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* going_;
    QWidget* body_;
    LookChoice* looks_;
    CoverageRing* ring_;
    std::map<Stage, QPushButton*> stages_;
    QPushButton* other_look_;
    Tray* tray_;
    PlanPart* plan_;
    MissingPart* missing_;
    HandPart* hand_;
    CloserPart* closer_;
    PhotoId faces_up_to_;  // the newest photo that was looked at for faces
};

}  // namespace quarterturn
