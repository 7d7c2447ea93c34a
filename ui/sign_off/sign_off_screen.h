#pragma once

#include "indexer/looks/look_state.h"
#include "ui/shell/screen.h"

class QHBoxLayout;
class QLabel;
class QStackedWidget;
class QVBoxLayout;

namespace quarterturn {

class EmptyPage;
class FilesPart;
class LookChoice;
class Notice;
class ReasonField;
class RecipeCheck;
class ShotRow;

// Sign-off: the shot list beside the recipe check, and her word that the look can be made again.
class SignOffScreen : public Screen {
    Q_OBJECT
  public:
    explicit SignOffScreen(Session& session);

    QString help() const override;
    void refresh() override;
    void arrive(const Place& place) override;

  private:
    void build();
    QWidget* build_page();
    void show_state();
    void show_standing();
    void add_seal();
    void add_changes();
    void add_signing();
    void add_reopening(QVBoxLayout& column);
    void show_shots();
    void show_history();
    void sign();
    ReasonField* reason_being_written() const;

    Session& session_;
    std::optional<LookId> look_;
    std::optional<LookState> state_;
    QStackedWidget* pages_;
    EmptyPage* empty_;
    QWidget* page_;
    LookChoice* looks_;
    QLabel* title_;
    QVBoxLayout* standing_;
    Notice* problem_;
    FilesPart* files_;
    QVBoxLayout* shots_;
    RecipeCheck* recipe_;
    QVBoxLayout* history_;
    std::vector<ShotRow*> rows_;
    bool signing_ = false;
};

}  // namespace quarterturn
