#pragma once

#include <QWidget>

#include "indexer/record/photo.h"
#include "indexer/rules/gate.h"

class QLabel;
class QPushButton;

namespace quarterturn {

class ClientSearch;
class FlowLayout;
class Session;

// Which clients are seen in a photo: the one whose look or sitting it is, and those she names
// beside her, such as a bridesmaid who stands behind the chair. Each of them has to allow what is
// shown.
class ClientsSeen : public QWidget {
    Q_OBJECT
  public:
    explicit ClientsSeen(Session& session, QWidget* parent = nullptr);

    void show_photo(const Photo& photo, const PhotoToShow& shown);

  private:
    void show_search(bool open);
    void offer_to_take_out(const ShownPerson& person);
    void name(ClientId client);
    void take_out(ClientId client);
    void say(const std::vector<ClientId>& beside);

    Session& session_;
    PhotoId photo_;
    std::vector<ClientId> in_it_;
    std::vector<ClientId> beside_;
    QLabel* people_;
    FlowLayout* to_take_out_;
    QPushButton* add_;
    ClientSearch* search_;
};

}  // namespace quarterturn
