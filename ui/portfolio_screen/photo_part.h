#pragma once

#include <QWidget>

#include "indexer/looks/photo_gate.h"

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace quarterturn {

class SeenForm;
class Session;
class WhoseForm;

// Beside the candidates: whether the chosen photo may go, what each obstacle asks of her, whose it
// is and who is seen in it.
class PhotoPart : public QWidget {
    Q_OBJECT
  public:
    explicit PhotoPart(Session& session, QWidget* parent = nullptr);

    // Nothing: no photo is chosen.
    void show_photo(const std::optional<Photo>& photo, Use use, bool selected);

  signals:
    void toggled();  // into the selection, or out of it
    void hair_only_asked();

  private:
    void show_verdict(const WayOut& way, const PhotoToShow& shown, Use use);
    void add_obstacle(const Against& against, const PhotoToShow& shown, Use use);

    Session& session_;
    Photo photo_;
    QLabel* hint_;
    QWidget* about_;
    QLabel* name_;
    QLabel* verdict_;
    QVBoxLayout* obstacles_;
    QPushButton* hair_only_;
    QPushButton* toggle_;
    WhoseForm* whose_;
    SeenForm* seen_;
};

}  // namespace quarterturn
