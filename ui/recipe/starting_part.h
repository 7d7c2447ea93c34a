#pragma once

#include <QFrame>

#include "ui/recipe/recipe_in_hand.h"

class QComboBox;
class QLineEdit;
class QPushButton;

namespace quarterturn {

class MarkedButton;
class Notice;

// To start from another look's recipe or a template of hers, and to keep templates.
class StartingPart : public QWidget {
    Q_OBJECT
  public:
    StartingPart(Session& session, RecipeInHand& in_hand, QWidget* parent = nullptr);

    void refresh();  // throws StoreError

  private:
    QWidget* build_body();
    QLayout* build_start();
    QLayout* build_templates();
    void unfold(bool unfolded);
    void start();
    void start_from_look(LookId look);
    void start_from_template(const std::string& name);
    void save_template();
    void remove_template();

    Session& session_;
    RecipeInHand& in_hand_;
    MarkedButton* heading_;
    QWidget* body_;
    QComboBox* from_;
    QPushButton* start_;
    QLineEdit* name_;
    QComboBox* templates_;
    QPushButton* remove_;
    Notice* notice_;
    bool unfolded_ = false;
};

}  // namespace quarterturn
