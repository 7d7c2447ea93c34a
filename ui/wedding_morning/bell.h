#pragma once

namespace quarterturn {

// The sound of a timer that has ended.
class Bell {
  public:
    virtual ~Bell() = default;
    virtual void ring() = 0;
};

}  // namespace quarterturn
