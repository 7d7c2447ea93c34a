#pragma once

namespace quarterturn {

// The sound of a timer that has ended.
class Bell {
  public:
    virtual ~Bell() = default;
    virtual void ring() = 0;
    virtual bool can_be_heard() = 0;  // false: there is nothing here that makes sounds
};

}  // namespace quarterturn
