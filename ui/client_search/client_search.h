#pragma once

#include <QWidget>

#include "indexer/record/people.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace quarterturn {

class FlowLayout;
class Session;

// Finds a client by any part of her name, in any script; case does not matter. Without words it
// offers the first names there are.
class ClientSearch : public QWidget {
    Q_OBJECT
  public:
    // `leads_to`: where a name leads, for a screen reader, such as "Records of %1".
    ClientSearch(Session& session, const QString& leads_to, QWidget* parent = nullptr);

    void show_names(std::optional<ClientId> current);  // throws StoreError

  signals:
    void chosen(quarterturn::ClientId client);

  private:
    void look_again();
    void offer(std::vector<Client> clients);
    void add_name(const Client& client);

    Session& session_;
    QString leads_to_;
    std::optional<ClientId> current_;
    QLineEdit* words_;
    FlowLayout* names_;
    std::vector<Client> offered_;
    std::map<ClientId, QPushButton*> buttons_;
    QLabel* rest_;
};

}  // namespace quarterturn
